package org.brakewright.kernel.gap;

import java.util.List;
import java.util.function.UnaryOperator;

/**
 * The hull of some corners, thickened all round: a sphere of one corner, a capsule of two, a plate, a box.
 *
 * @param corners one or more, in any order; those inside the hull do no harm
 * @param radius by how much the hull is thickened, 0 or more, m
 */
public record ConvexBody(List<Point> corners, double radius) {
    /** Refuses a body without corners or with a negative radius. */
    public ConvexBody {
        if (corners.isEmpty()) {
            throw new IllegalArgumentException("a body needs a corner");
        }
        if (!(radius >= 0) || Double.isInfinite(radius)) {
            throw new IllegalArgumentException("radius must be 0 or more: " + radius);
        }
        corners = List.copyOf(corners);
    }

    /** The corner that lies farthest along a direction, without the radius. */
    Point farthest(Point direction) {
        Point best = corners.getFirst();
        for (Point corner : corners) {
            if (corner.dot(direction) > best.dot(direction)) {
                best = corner;
            }
        }
        return best;
    }

    /** The body with every corner moved; the motion must keep lengths. */
    public ConvexBody moved(UnaryOperator<Point> motion) {
        return new ConvexBody(corners.stream().map(motion).toList(), radius);
    }
}
