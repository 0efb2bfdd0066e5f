package org.brakewright.kernel.gap;

/** A corner of the difference of two bodies, and where it comes from. */
record Corner(Point first, Point second, Point difference) {
    /** The corner of {@code first - second} that lies farthest along a direction. */
    static Corner farthest(ConvexBody first, ConvexBody second, Point direction) {
        Point a = first.farthest(direction);
        Point b = second.farthest(direction.times(-1));
        return new Corner(a, b, a.minus(b));
    }
}
