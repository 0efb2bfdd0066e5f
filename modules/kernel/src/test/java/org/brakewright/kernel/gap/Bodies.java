package org.brakewright.kernel.gap;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Bodies of the size of a footwell for tests, and motions of them. */
final class Bodies {
    private Bodies() {}

    static ConvexBody ball(Point centre, double radius) {
        return new ConvexBody(List.of(centre), radius);
    }

    static ConvexBody box(Point low, Point high) {
        List<Point> corners = new ArrayList<>();
        for (double x : new double[] {low.x(), high.x()}) {
            for (double y : new double[] {low.y(), high.y()}) {
                for (double z : new double[] {low.z(), high.z()}) {
                    corners.add(new Point(x, y, z));
                }
            }
        }
        return new ConvexBody(corners, 0);
    }

    /** The body turned about a random axis through the origin. */
    static ConvexBody turned(ConvexBody body, Point axis, double angle) {
        return new Swing(body, new Point(0, 0, 0), axis).at(angle);
    }

    static ConvexBody shifted(ConvexBody body, Point way) {
        return body.moved(corner -> corner.plus(way));
    }

    static ConvexBody mirrored(ConvexBody body) {
        return body.moved(corner -> new Point(corner.x(), -corner.y(), corner.z()));
    }

    static Point random(Random random, double reach) {
        return new Point(
                reach * (2 * random.nextDouble() - 1),
                reach * (2 * random.nextDouble() - 1),
                reach * (2 * random.nextDouble() - 1));
    }

    /** A ball, rod, plate or lump of up to eight corners. */
    static ConvexBody any(Random random) {
        Point middle = random(random, 0.5);
        List<Point> corners = new ArrayList<>();
        for (int i = random.nextInt(8); i >= 0; i--) {
            corners.add(middle.plus(random(random, 0.15)));
        }
        return new ConvexBody(corners, random.nextBoolean() ? 0 : 0.02 * random.nextDouble());
    }
}
