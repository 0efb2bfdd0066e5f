package org.brakewright.analysis.resolve;

import java.util.Locale;
import org.brakewright.model.resolved.ResolvedFootwell;
import org.brakewright.model.resolved.ResolvedFootwell.FootPad;

/** Looks for pedals that do not stand side by side in their order, or beyond the walls. */
final class FootwellFaults {
    private final Values values;
    private final ResolvedFootwell footwell;
    private final int before;

    FootwellFaults(Values values, ResolvedFootwell footwell) {
        this.values = values;
        this.footwell = footwell;
        this.before = values.problems().size();
    }

    /** Whether there is none; reports every one. */
    boolean none() {
        apart("footwell.throttle.pad.left", footwell.throttle(), footwell.brake(), "throttle", "brake");
        footwell.clutch().ifPresent(clutch -> apart("footwell.brake", footwell.brake(), clutch, "brake", "clutch"));
        FootPad leftmost = footwell.clutch().orElse(footwell.brake());
        footwell.leftWall().ifPresent(wall -> beside("footwell.left_wall", wall, wall - left(leftmost)));
        footwell.rightWall().ifPresent(wall -> beside("footwell.right_wall", wall, right(footwell.throttle()) - wall));
        swings("footwell.brake", footwell.brake());
        footwell.clutch().ifPresent(clutch -> swings("footwell.clutch", clutch));
        swings("footwell.throttle", footwell.throttle());
        return values.problems().size() == before;
    }

    private void apart(String path, FootPad right, FootPad left, String rightName, String leftName) {
        double gap = right(left) - left(right);
        if (gap <= 0) {
            values.problem(
                    path,
                    millimetres(-gap),
                    "The pads of " + leftName + " and " + rightName
                            + " overlap by this, seen along the car; the throttle is the right pedal, the clutch the left.",
                    "pads beside each other");
        }
    }

    private void beside(String path, double wall, double room) {
        if (room < 0) {
            values.problem(path, millimetres(wall), "This wall stands within the pedals.", "a wall beside them");
        }
    }

    /** An arc of more than half a turn is no pedal. */
    private void swings(String path, FootPad pad) {
        double radius = Math.hypot(
                pad.pad().x() - pad.pivot().x(), pad.pad().z() - pad.pivot().z());
        if (pad.travel() > radius * Math.PI) {
            values.problem(
                    path,
                    millimetres(pad.travel()),
                    "The pad would swing by more than half a turn on its arm of " + millimetres(radius) + ".",
                    "a longer arm or less travel");
        }
    }

    private static double left(FootPad pad) {
        return pad.pad().y() + pad.breadth() / 2;
    }

    private static double right(FootPad pad) {
        return pad.pad().y() - pad.breadth() / 2;
    }

    private static String millimetres(double metre) {
        return String.format(Locale.ROOT, "%.1f mm", 1000 * metre);
    }
}
