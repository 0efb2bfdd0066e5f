package org.brakewright.analysis.pedal;

import org.brakewright.analysis.hydraulics.Cause;

/**
 * What one cause takes of the pedal's travel.
 *
 * @param where front circuit, rear circuit, or pedal when neither
 * @param cause what takes it
 * @param volumeM3 fluid taken, 0 for mechanical causes
 * @param padTravelM at the pad
 */
public record TravelShare(Where where, Cause cause, double volumeM3, double padTravelM) {

    /** Place of a cause. */
    public enum Where {
        PEDAL,
        FRONT,
        REAR
    }
}
