package org.brakewright.analysis.clutch;

import java.util.List;
import org.brakewright.analysis.pedal.PushrodState;
import org.jspecify.annotations.Nullable;

/**
 * The clutch: its release and what it carries.
 *
 * @param concentric whether the slave is a ring round the input shaft
 * @param inContact whether the bearing rests on the fingers
 * @param travelRatio pad travel over bearing travel with the pedal up, without any loss
 * @param pedalEndM pad travel at which the pedal ends with a new plate: at its stop, or where the master has no stroke left
 * @param masterEnds whether the master ends before the pedal's stop
 * @param mostBearingTravelM allowed by the cover
 * @param fingerRatio finger travel over lift of the plate
 * @param clampGivenN as given; null when not given
 * @param clampImpliedN that the force at the bearing implies
 * @param fingerRiseM how far the finger tips come toward the bearing until the plate is worn
 * @param wearRoomM what is left of gap or room behind the slave then; minus when the bearing would hold the clutch open
 * @param stop where the pedal's stop belongs
 * @param newPlate with a new plate
 * @param wornPlate with a plate worn as far as allowed
 * @param torque what it carries
 * @param losses where the pad's travel goes until a new plate is free
 * @param pushrod how the rod is cut; null without its thread and clevis, and where its length is not known
 */
public record ClutchState(
        boolean concentric,
        boolean inContact,
        double travelRatio,
        double pedalEndM,
        boolean masterEnds,
        double mostBearingTravelM,
        double fingerRatio,
        @Nullable Double clampGivenN,
        double clampImpliedN,
        double fingerRiseM,
        double wearRoomM,
        Stop stop,
        PlateState newPlate,
        PlateState wornPlate,
        Torque torque,
        List<Loss> losses,
        @Nullable PushrodState pushrod) {

    /** The plate that lacks most to be free. */
    public PlateState leastFree() {
        return newPlate.spareM() <= wornPlate.spareM() ? newPlate : wornPlate;
    }

    /** The plate over which the bearing goes furthest. */
    public PlateState furthest() {
        return newPlate.bearingTravelM() >= wornPlate.bearingTravelM() ? newPlate : wornPlate;
    }

    /** The plate that takes the most effort. */
    public PlateState heaviest() {
        return newPlate.mostEffortN() >= wornPlate.mostEffortN() ? newPlate : wornPlate;
    }

    /**
     * Where the pedal's stop belongs, as pad travel.
     *
     * @param leastM at which new and worn plate are both free
     * @param mostM at which neither cover nor slave is strained
     * @param bestM 1 mm of bearing travel and 15 mm of pedal beyond free, or the middle when the room is less; null when
     *     there is no room
     */
    public record Stop(
            double leastM, double mostM, @Nullable Double bestM) {
        /** Pad travel that one factory leaves beyond the free point, from a secondary source, m. */
        public static final double PAD_BEYOND_FREE = 15e-3;
    }

    /**
     * What the clutch carries, as worn or as new as carries least.
     *
     * @param uniformWearNM bedded
     * @param uniformPressureNM new facings
     * @param engineNM greatest engine torque; null when not given
     * @param reserve uniform wear over engine torque; null when that is not given
     * @param greatestPressurePa on the facing
     */
    public record Torque(
            double uniformWearNM,
            double uniformPressureNM,
            @Nullable Double engineNM,
            @Nullable Double reserve,
            double greatestPressurePa) {}

    /**
     * What one cause takes of the pad's travel.
     *
     * @param cause what takes it
     * @param padTravelM at the pad
     */
    public record Loss(LossCause cause, double padTravelM) {}
}
