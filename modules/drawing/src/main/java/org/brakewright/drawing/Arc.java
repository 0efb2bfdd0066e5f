package org.brakewright.drawing;

/**
 * Part of a circle, counterclockwise from start to end.
 *
 * @param radius mm
 * @param start degrees, counterclockwise from the x axis
 * @param end degrees; made more than {@code start} by whole turns, by one turn at most
 */
public record Arc(Point centre, double radius, double start, double end, Stroke stroke) implements Mark {
    public Arc {
        Demand.positive("radius", radius);
        Demand.finite("start", start);
        Demand.finite("end", end);
        double sweep = (end - start) % 360;
        end = start + (sweep <= 0 ? sweep + 360 : sweep);
    }

    /** Angle from start to end, degrees in (0, 360]. */
    public double sweep() {
        return end - start;
    }

    /** The place on the circle at an angle in degrees. */
    public Point at(double degrees) {
        return centre.polar(radius, degrees);
    }

    /** Whether the arc passes an angle in degrees. */
    public boolean passes(double degrees) {
        double beyond = (degrees - start) % 360;
        return (beyond < 0 ? beyond + 360 : beyond) <= sweep();
    }
}
