package org.brakewright.analysis.feel;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Force against travel of one pedal.
 *
 * @param points from no force on, rising, closer together where the curve bends
 * @param end what ends it
 * @param runOut where the booster has given all it can; null without one, or beyond the end
 * @param travelAtHardStopM pad travel under the hard stop's pedal force, told beyond the end too, m; null without a hard stop
 */
public record FeelCurve(
        List<FeelPoint> points,
        End end,
        @Nullable FeelPoint runOut,
        @Nullable Double travelAtHardStopM) {

    /** Pad travel (m) at a pedal force (N), straight between the points; null beyond the end. */
    public @Nullable Double travelAt(double pedalForce) {
        for (int i = 1; i < points.size(); i++) {
            FeelPoint before = points.get(i - 1);
            FeelPoint after = points.get(i);
            if (after.pedalForceN() >= pedalForce) {
                double gained = after.pedalForceN() - before.pedalForceN();
                double share = gained == 0 ? 1 : (pedalForce - before.pedalForceN()) / gained;
                return before.padTravelM() + share * (after.padTravelM() - before.padTravelM());
            }
        }
        return null;
    }

    /** What ends a curve. */
    public enum End {
        /** Nothing but the range of forces drawn. */
        FORCE,
        /** The pedal meets its stop. */
        PEDAL_STOP,
        /** The front master or chamber is at its end. */
        FRONT_MASTER,
        /** The rear master or chamber is at its end. */
        REAR_MASTER,
        /** The pedal would need less force to go on: a mechanism near over-centre. */
        OVER_CENTRE
    }
}
