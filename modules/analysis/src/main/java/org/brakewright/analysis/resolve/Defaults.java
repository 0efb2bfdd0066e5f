package org.brakewright.analysis.resolve;

import static org.brakewright.analysis.resolve.Default.estimate;
import static org.brakewright.analysis.resolve.Default.practice;

import org.brakewright.kernel.dynamics.Gravity;
import org.brakewright.model.Tag;
import org.brakewright.model.brake.CaliperType;
import org.brakewright.model.brake.ShoeArrangement;
import org.brakewright.model.hydraulics.FluidGrade;
import org.jspecify.annotations.Nullable;

/** Everything that is assumed when the builder does not say, SI, each with range and basis. */
final class Defaults {
    static final Default GRIP = estimate(0.9, 0.8, 1.0, "road tyres on dry asphalt");
    static final Default TOP_SPEED = estimate(45.0, 30.0, 60.0, "a road car");

    static final Default PAD_FRICTION =
            practice(0.38, 0.30, 0.45, "street pads, 0.3 to 0.4 quoted, some a little higher");
    static final Default DISC_THRESHOLD = estimate(0.5e5, 0.2e5, 1.0e5, "seal drag of a caliper");
    static final Default RUNNING_CLEARANCE =
            practice(0.10e-3, 0.05e-3, 0.30e-3, "about 0.1 mm a pad when the disc runs true");
    static final Default KNOCK_BACK = estimate(0, 0, 0.10e-3, "none on a straight road; corners push pads back");
    static final Default PAD_SETTLING = estimate(0.01e-3, 0, 0.04e-3, "shims and back plates lie flat");
    static final Default PAD_COMPRESSION = estimate(4.0e-12, 2.0e-12, 10.0e-12, "a bedded pad with its back plate");

    static final Default DRUM_THRESHOLD = estimate(3.0e5, 1.0e5, 5.0e5, "pull of the shoe springs");
    static final Default SHOE_MOVEMENT = estimate(0.8e-3, 0.5e-3, 1.2e-3, "shoes adjusted, 2.5 mm when neglected");
    static final Default SHOE_COMPRESSION =
            estimate(40.0e-12, 20.0e-12, 80.0e-12, "shoes and drum give more than a caliper");
    static final Default LINING_FRICTION = new Default(
            0.35, 0.25, 0.45, "letters E and F of the edge code that most linings bear, SAE J866", Tag.FROM_MEMORY);

    static final Default HAND_FORCE =
            new Default(400, 200, 400, "the most that UN R13-H and FMVSS 135 allow at a hand lever", Tag.FROM_MEMORY);
    static final Default FOOT_FORCE =
            new Default(500, 250, 500, "the most that UN R13-H and FMVSS 135 allow at a pedal", Tag.FROM_MEMORY);
    static final Default CABLE_EFFICIENCY = estimate(0.70, 0.50, 0.85, "a used cable with bends and an equaliser");
    static final Default STANDING_PAD_FRICTION = estimate(0.30, 0.20, 0.40, "street pads, cold and standing still");

    static final Default FREE_PLAY = practice(3.0e-3, 1.0e-3, 6.0e-3, "1 to 6 mm at the pad in service data");
    static final Default TRAVEL_TO_STOP = estimate(0.150, 0.120, 0.170, "a pedal that is free to the floor");
    static final Default PUSHROD_ANGLE = estimate(0.0, -0.09, 0.09, "pushrod square to its arm within 5 degrees");
    static final Default PEDAL_EFFICIENCY =
            estimate(0.85, 0.78, 0.92, "friction of pivot, bar, rods and seals together");
    static final Default MOUNT_STIFFNESS = new Default(
            2.0e5,
            1.0e5,
            6.0e5,
            "200 N/mm at the pad is a maker's criterion for dash and cowl, thin panels do worse",
            Tag.SECONDARY);

    static final Default ARM_STIFFNESS = estimate(1.0e6, 4.0e5, 3.0e6, "a steel pedal arm without offset");
    static final Default SLACK = estimate(0.1e-3, 0, 0.4e-3, "pins that fit, not yet worn");
    static final Default AXIS_RISE = estimate(0, -0.09, 0.09, "master level within 5 degrees");

    static final Default MASTER_STROKE =
            estimate(28.0e-3, 25.0e-3, 36.0e-3, "single masters with 1.0 to 1.4 in of stroke");
    static final Default MASTER_LOST_STROKE =
            estimate(1.2e-3, 0.8e-3, 2.0e-3, "piston seal to the far side of the port");
    static final Default TANDEM_LOST_STROKE = estimate(2.0e-3, 1.4e-3, 3.5e-3, "both chambers' seals to their ports");
    static final Default CHAMBER_STROKE = estimate(17.0e-3, 14.0e-3, 20.0e-3, "half of a tandem master's stroke");
    static final Default MASTER_SPRING = estimate(30.0, 10.0, 60.0, "return spring at the start of its stroke");
    static final Default SPRING_RATE =
            estimate(1.0e3, 3.0e2, 2.5e3, "a return spring that doubles its force on the way");
    static final Default SEAL_FRICTION = estimate(0, 0, 20.0, "already in the pedal's efficiency");

    static final Default CLEVIS_SPACING = estimate(64.0e-3, 55.0e-3, 76.0e-3, "bars for pedals of this size");
    static final Default BAR_OFFSET = estimate(0.0, -2.0e-3, 2.0e-3, "bar taken as centred until it is measured");
    static final Default BAR_MOVEMENT_PER_TURN =
            estimate(1.06e-3, 0.9e-3, 1.27e-3, "a bar thread of 24 turns to the inch");
    static final Default BAR_TILT_LIMIT =
            estimate(0.21, 0.14, 0.28, "a bar that tilts 8 to 16 degrees before a clevis touches");

    static final Default PIN_SET_BACK = estimate(0, -2.0e-3, 2.0e-3, "clevis pins in line with the bearing");
    static final Default REST_LEAD = estimate(0, -4.0e-3, 4.0e-3, "bar square to the pedal at rest");
    static final Default ROD_LENGTH = estimate(90.0e-3, 60.0e-3, 130.0e-3, "rods of pedals of this size");

    static final Default BOOSTER_VACUUM = practice(6.1e4, 5.1e4, 7.0e4, "17 to 20 inHg at idle is asked for");
    static final Default BOOSTER_CRACK_IN = estimate(40.0, 20.0, 80.0, "spring of the booster's valve");
    static final Default BOOSTER_EFFICIENCY = estimate(0.95, 0.9, 0.98, "return spring and seal of the diaphragm");

    static final Default TUBE_LENGTH = estimate(4.0, 2.5, 6.0, "tube of one circuit in a car");
    static final Default TUBE_OUTSIDE = practice(4.7625e-3, 4.7e-3, 6.35e-3, "3/16 in tube, 1/4 in at most");
    static final Default TUBE_WALL = practice(0.71e-3, 0.65e-3, 0.9e-3, "0.028 in wall");
    static final Default TUBE_MODULUS = estimate(205.0e9, 110.0e9, 205.0e9, "steel; copper-nickel is softer");
    static final Default HOSE_LENGTH = estimate(0.7, 0.3, 1.0, "two hoses at the wheels");
    static final Default HOSE_EXPANSION = new Default(
            2.59e-6,
            0.4e-6,
            2.59e-6,
            "ceiling of 49 CFR 571.106 for 1/8 in hose, most hose stays below",
            Tag.FROM_MEMORY);
    static final Default TRAPPED_VOLUME =
            estimate(30.0e-6, 15.0e-6, 50.0e-6, "fluid behind the pistons and in the master");
    static final Default FREE_AIR = estimate(0.001, 0.0, 0.005, "a well bled system");

    static final Default HARD_STOP =
            estimate(0.9 * Gravity.STANDARD, 0.8 * Gravity.STANDARD, 1.0 * Gravity.STANDARD, "a hard stop on dry road");
    static final Default MOST_EFFORT =
            practice(445.0, 310.0, 500.0, "70 lbf is comfortable, 100 lbf is relaxed for a hard stop");
    static final Default MOST_TRAVEL =
            estimate(75.0e-3, 50.0e-3, 90.0e-3, "the foot's reach between heel rest and stretched leg");
    static final Default LEAST_RESERVE = new Default(
            0.20, 0.20, 0.30, "20 % of the travel must remain at a firm push in an inspection rule", Tag.SECONDARY);
    static final Default LEAST_STROKE_LEFT = estimate(0.15, 0.10, 0.25, "room for worn pads and warm fluid");
    static final Default BALANCE_MARGIN = estimate(0.05, 0.0, 0.10, "tyre grip and pads vary by some percent");
    static final Default PANIC_PUSH =
            practice(1335.0, 885.0, 2000.0, "300 lbf is the most a leg gives in the trade's view");

    static final Default AIR_IN_ONE_CIRCUIT =
            estimate(0.05, 0.02, 0.10, "some cubic centimetres of bubbles in a circuit opened and not bled well");

    private Defaults() {}

    /** Height of the centre of gravity by wheelbase (m). */
    static Default cgHeight(double wheelbase) {
        return estimate(
                0.19 * wheelbase,
                0.15 * wheelbase,
                0.24 * wheelbase,
                "0.15 of the wheelbase in a low car, 0.24 in a pickup");
    }

    /** Largest bearing offset by clevis spacing (m). */
    static Default offsetLimit(double spacing) {
        return practice(
                spacing / 6, spacing / 8, spacing / 5, "fully to one side gives about twice the push of the other");
    }

    /** Spacing of the masters by clevis spacing (m). */
    static Default masterSpacing(double clevisSpacing) {
        return estimate(
                clevisSpacing, clevisSpacing - 3.0e-3, clevisSpacing + 3.0e-3, "masters as far apart as the clevises");
    }

    static Default caliperSpread(CaliperType type) {
        return switch (type) {
            case FIXED -> estimate(15.0e-12, 8.0e-12, 40.0e-12, "a stiff fixed caliper");
            case SLIDING -> estimate(22.0e-12, 12.0e-12, 50.0e-12, "a sliding caliper with its bridge");
        };
    }

    static Default brakeFactor(ShoeArrangement shoes) {
        return switch (shoes) {
            case LEADING_TRAILING -> practice(2.3, 2.0, 2.5, "leading and trailing shoes");
            case TWO_LEADING -> estimate(3.0, 2.5, 3.5, "two leading shoes");
            case SELF_ENERGISING -> practice(4.0, 3.5, 5.0, "self-energising shoes, very sensitive to lining friction");
        };
    }

    /** Factor of a drum when the car rolls backward, by the one when it rolls forward. */
    static Default reverseFactor(ShoeArrangement shoes, double forward) {
        return switch (shoes) {
            case LEADING_TRAILING, SELF_ENERGISING ->
                estimate(forward, 0.7 * forward, forward, "shoes that are alike hold alike both ways");
            case TWO_LEADING ->
                estimate(0.4 * forward, 0.3 * forward, 0.55 * forward, "two leading shoes both trail in reverse");
        };
    }

    static Default bulkModulus(@Nullable FluidGrade grade) {
        if (grade == FluidGrade.DOT_5) {
            return estimate(1.1e9, 0.8e9, 1.3e9, "silicone fluid gives more than glycol");
        }
        return new Default(1.7e9, 1.1e9, 2.0e9, "glycol-ether fluid, 20 C to 100 C, before any air", Tag.FROM_MEMORY);
    }
}
