package org.brakewright.drawing;

/**
 * One edge of a polyline.
 *
 * @param bulge as in {@link Vertex}
 */
public record Edge(Point from, Point to, double bulge) {
    /** Whether the edge is straight: an arc between coinciding ends has no circle either. */
    public boolean straight() {
        return bulge == 0 || from.equals(to);
    }

    /** Angle the edge turns by, degrees, positive to the left. */
    public double turn() {
        return Math.toDegrees(4 * Math.atan(bulge));
    }

    /** Length of the edge, mm. */
    public double length() {
        return straight()
                ? from.distance(to)
                : Math.abs(Math.toRadians(turn())) * arc(Stroke.OUTLINE).radius();
    }

    /**
     * The edge as an arc; only for one that is not straight. With chord c and turn t the radius is c / (2 sin(t/2)), and
     * the middle stands c / (2 tan(t/2)) to the left of the chord: both follow from b = tan(t/4).
     */
    public Arc arc(Stroke stroke) {
        double chord = from.distance(to);
        double radius = chord * (1 + bulge * bulge) / (4 * Math.abs(bulge));
        double left = chord * (1 - bulge * bulge) / (4 * bulge);
        double direction = from.direction(to);
        Point middle = new Point((from.x() + to.x()) / 2, (from.y() + to.y()) / 2);
        Point centre = middle.polar(left, direction + 90);
        double start = centre.direction(bulge > 0 ? from : to);
        return new Arc(centre, radius, start, start + Math.abs(turn()), stroke);
    }
}
