package org.brakewright.kernel.fastener;

/** A straight fillet weld from one point to another. */
public record WeldLine(Point from, Point to) {
    public WeldLine {
        Point along = to.minus(from);
        Require.positive("length", Math.hypot(along.x(), along.y()));
    }

    double length() {
        Point along = to.minus(from);
        return Math.hypot(along.x(), along.y());
    }

    Point middle() {
        return new Point((from.x() + to.x()) / 2, (from.y() + to.y()) / 2);
    }
}
