package org.brakewright.analysis.feel;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Force against travel of one pedal.
 *
 * @param points from no force on, rising, closer together where the curve bends
 * @param end what ends it
 * @param travelAtHardStopM pad travel under the hard stop's pedal force, told beyond the end too, m; null without a hard stop
 */
public record FeelCurve(
        List<FeelPoint> points, End end, @Nullable Double travelAtHardStopM) {

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
