package org.brakewright.drawing;

/** An upright rectangle, mm. */
public record Bounds(double minX, double minY, double maxX, double maxY) {
    public Bounds {
        Demand.finite("minX", minX);
        Demand.finite("minY", minY);
        Demand.finite("maxX", maxX);
        Demand.finite("maxY", maxY);
        if (minX > maxX || minY > maxY) {
            throw new IllegalArgumentException("minX, minY must not lie beyond maxX, maxY");
        }
    }

    /** The rectangle with a lower left corner and a size, mm. */
    public static Bounds at(Point corner, double width, double height) {
        return new Bounds(corner.x(), corner.y(), corner.x() + width, corner.y() + height);
    }

    /** The rectangle around a middle with a size, mm. */
    public static Bounds around(Point middle, double width, double height) {
        return at(middle.plus(-width / 2, -height / 2), width, height);
    }

    public double width() {
        return maxX - minX;
    }

    public double height() {
        return maxY - minY;
    }

    public Point corner() {
        return new Point(minX, minY);
    }

    public Point middle() {
        return new Point((minX + maxX) / 2, (minY + maxY) / 2);
    }

    /** The rectangle with each side moved out by {@code margin} mm. */
    public Bounds grown(double margin) {
        return new Bounds(minX - margin, minY - margin, maxX + margin, maxY + margin);
    }

    /** The same rectangle, moved, mm. */
    public Bounds moved(double dx, double dy) {
        return new Bounds(minX + dx, minY + dy, maxX + dx, maxY + dy);
    }

    /** The smallest rectangle that holds both. */
    public Bounds union(Bounds other) {
        return new Bounds(
                Math.min(minX, other.minX),
                Math.min(minY, other.minY),
                Math.max(maxX, other.maxX),
                Math.max(maxY, other.maxY));
    }

    /** Whether a place lies inside or on the edge. */
    public boolean contains(Point point) {
        return point.x() >= minX && point.x() <= maxX && point.y() >= minY && point.y() <= maxY;
    }

    /** Whether another rectangle lies wholly inside. */
    public boolean contains(Bounds other) {
        return contains(other.corner()) && contains(new Point(other.maxX, other.maxY));
    }

    /** The rectangle as a closed line. */
    public Polyline outline(Stroke stroke) {
        return Polyline.closed(stroke, corner(), new Point(maxX, minY), new Point(maxX, maxY), new Point(minX, maxY));
    }
}
