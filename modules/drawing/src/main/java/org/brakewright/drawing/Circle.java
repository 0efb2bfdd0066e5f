package org.brakewright.drawing;

/**
 * A full circle.
 *
 * @param radius mm
 */
public record Circle(Point centre, double radius, Stroke stroke) implements Contour {
    public Circle {
        Demand.positive("radius", radius);
    }
}
