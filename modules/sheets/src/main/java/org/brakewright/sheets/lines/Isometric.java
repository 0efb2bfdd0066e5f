package org.brakewright.sheets.lines;

import org.brakewright.drawing.Point;
import org.brakewright.model.resolved.ResolvedLines.Spot;

/**
 * Isometric projection (ISO 5456-3): the three axes 120 degrees apart and equally short. Seen from the car's left, front
 * and above: forward runs down to the left, left runs down to the right, up is up.
 */
final class Isometric {
    private static final double ACROSS = Math.sqrt(0.5);
    private static final double DOWN = Math.sqrt(1.0 / 6);
    private static final double UP = Math.sqrt(2.0 / 3);

    private Isometric() {}

    /** A place (m) on paper, in m. */
    static Point of(Spot spot) {
        return new Point(ACROSS * (spot.y() - spot.x()), UP * spot.z() - DOWN * (spot.x() + spot.y()));
    }
}
