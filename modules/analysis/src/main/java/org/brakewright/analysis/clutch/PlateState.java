package org.brakewright.analysis.clutch;

import java.util.List;

/**
 * The release over a plate, new or worn.
 *
 * @param wearM of both facings together
 * @param clampForceN engaged
 * @param gapM between bearing and fingers at rest
 * @param neededM bearing travel that frees the plate
 * @param liftOffPadM pad travel at which no clamp force is left
 * @param freePadM pad travel at which the plate is free
 * @param bearingTravelM of the bearing on the fingers at the pedal's end
 * @param extensionLeftM how much further the slave could go there; minus when it is pushed beyond its stroke
 * @param mostEffortN on the way to the pedal's end
 * @param effortAtFreeN where the plate is free
 * @param leastReturnN with which the pedal comes back, friction taken off; minus when it stays down
 * @param beyondData whether the bearing goes further than the cover's force is known
 * @param curve from rest to the pedal's end
 */
public record PlateState(
        double wearM,
        double clampForceN,
        double gapM,
        double neededM,
        double liftOffPadM,
        double freePadM,
        double bearingTravelM,
        double extensionLeftM,
        double mostEffortN,
        double effortAtFreeN,
        double leastReturnN,
        boolean beyondData,
        List<CurvePoint> curve) {

    /** Bearing travel (m) beyond what frees the plate; minus when it is not free. */
    public double spareM() {
        return bearingTravelM - neededM;
    }

    /**
     * One point of the clutch curve.
     *
     * @param padTravelM from free position
     * @param effortN while pushing
     * @param bearingTravelM on the fingers
     * @param pressurePa in the line
     * @param clampForceN left on the facings
     */
    public record CurvePoint(
            double padTravelM, double effortN, double bearingTravelM, double pressurePa, double clampForceN) {}
}
