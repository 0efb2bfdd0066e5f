package org.brakewright.kernel.tubing;

/**
 * Room that a tube has to keep out of. The signed distance of a convex body is a convex function of the place, which is
 * what {@link CentreLine#nearest} leans on.
 */
public sealed interface Envelope {
    /** How far (m) a point lies outside the surface; below 0 inside. */
    double distance(Point point);

    /**
     * A ball.
     *
     * @param middle m
     * @param radius m
     */
    record Ball(Point middle, double radius) implements Envelope {
        public Ball {
            Demand.positive("radius", radius);
        }

        @Override
        public double distance(Point point) {
            return point.minus(middle).length() - radius;
        }
    }

    /**
     * A box along the axes.
     *
     * @param low corner, m
     * @param high opposite corner, m
     */
    record Box(Point low, Point high) implements Envelope {
        public Box {
            Demand.holds(
                    low.x() < high.x() && low.y() < high.y() && low.z() < high.z(),
                    "low must lie below high in x, y and z, are " + low + " and " + high);
        }

        @Override
        public double distance(Point point) {
            double x = Math.max(low.x() - point.x(), point.x() - high.x());
            double y = Math.max(low.y() - point.y(), point.y() - high.y());
            double z = Math.max(low.z() - point.z(), point.z() - high.z());
            double outside = new Point(Math.max(x, 0), Math.max(y, 0), Math.max(z, 0)).length();
            return outside + Math.min(0, Math.max(x, Math.max(y, z)));
        }
    }

    /**
     * A cylinder with flat ends.
     *
     * @param from one end of the axis, m
     * @param to the other, m
     * @param radius m
     */
    record Cylinder(Point from, Point to, double radius) implements Envelope {
        public Cylinder {
            Demand.positive("radius", radius);
            Demand.positive("length of the axis", to.minus(from).length());
        }

        @Override
        public double distance(Point point) {
            Point axis = to.minus(from);
            Point way = point.minus(from);
            double along = way.dot(axis) / axis.length();
            double side = way.minus(axis.times(along / axis.length())).length() - radius;
            double end = Math.max(-along, along - axis.length());
            return Math.hypot(Math.max(side, 0), Math.max(end, 0)) + Math.min(0, Math.max(side, end));
        }
    }
}
