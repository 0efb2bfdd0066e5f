package org.brakewright.model.resolved;

import java.util.Optional;
import java.util.OptionalDouble;
import org.brakewright.model.brake.ShoeArrangement;

/** Wheel brakes of one axle in SI. */
public sealed interface ResolvedBrake {

    /** Pressure below which the brake gives no torque, Pa. */
    double thresholdPressure();

    /** Rated pressure from the part sheet, Pa; empty when not known. */
    OptionalDouble ratedPressure();

    /** What cold, heat and water do to it. */
    FrictionStates frictionStates();

    /**
     * Brake force at the same pressure over that of the working brake.
     *
     * @param cold the first stop of a cold morning
     * @param hot as pads or linings fade
     * @param wet with water on them
     */
    record FrictionStates(double cold, double hot, double wet) {
        /** A brake that neither cold nor heat nor water changes. */
        public static final FrictionStates STEADY = new FrictionStates(1, 1, 1);
    }

    /**
     * Disc brakes, one caliper a wheel.
     *
     * @param pistonArea of the pistons on ONE side of the disc, m2
     * @param friction pad friction
     * @param effectiveRadius m
     * @param thresholdPressure Pa
     * @param runningClearance each pad, m
     * @param knockBack each pad, beyond the running clearance, m
     * @param caliperSpread opening of the caliper per pressure, m/Pa
     * @param padCompression give of each pad per pressure, m/Pa
     * @param padSettling give of each pad under light pressure, m
     * @param padWear lining that a pad may lose, m; empty when not known
     * @param ratedPressure Pa
     * @param frictionStates what cold, heat and water do to it
     */
    record Disc(
            double pistonArea,
            double friction,
            double effectiveRadius,
            double thresholdPressure,
            double runningClearance,
            double knockBack,
            double caliperSpread,
            double padCompression,
            double padSettling,
            OptionalDouble padWear,
            OptionalDouble ratedPressure,
            FrictionStates frictionStates)
            implements ResolvedBrake {}

    /**
     * Drum brakes, one double-ended wheel cylinder a wheel.
     *
     * @param brakeFactor drag at the drum over force of one wheel cylinder piston
     * @param wheelCylinderArea of one bore, m2
     * @param drumRadius m
     * @param thresholdPressure Pa
     * @param shoeMovement until the shoe touches, each piston, m
     * @param shoeCompression give of shoe and drum per pressure, each piston, m/Pa
     * @param shoeWear lining that a shoe may lose, m; empty when not known
     * @param cupExpanders whether the wheel cylinders have them; empty when not said
     * @param ratedPressure Pa
     * @param arrangement how the shoes stand to each other
     * @param shoes what the brake factor follows from; empty when it was given or assumed
     * @param frictionStates what cold, heat and water do to it
     */
    record Drum(
            double brakeFactor,
            double wheelCylinderArea,
            double drumRadius,
            double thresholdPressure,
            double shoeMovement,
            double shoeCompression,
            OptionalDouble shoeWear,
            Optional<Boolean> cupExpanders,
            OptionalDouble ratedPressure,
            ShoeArrangement arrangement,
            Optional<ResolvedShoes> shoes,
            FrictionStates frictionStates)
            implements ResolvedBrake {}
}
