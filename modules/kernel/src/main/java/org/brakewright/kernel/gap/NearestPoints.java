package org.brakewright.kernel.gap;

/**
 * Nearest points of two convex bodies by walking over the corners of their difference (Gilbert, Johnson and Keerthi, A
 * fast procedure for computing the distance between complex objects in three-dimensional space, IEEE Journal of Robotics
 * and Automation 4 (1988) 193-203). Each step tells a lower bound too, so the error is known and not guessed.
 */
public final class NearestPoints {
    /** Relative to the size of the bodies: stop when the bounds lie this close. */
    private static final double CLOSE = 1e-13;

    /** Far more than boxes and plates need; a walk that ends here says so by its bound. */
    private static final int MOST_STEPS = 200;

    private NearestPoints() {}

    /**
     * The gap between two bodies.
     *
     * @param first one body
     * @param second the other
     * @return clearance and where it is, with the bound of its error
     */
    public static Gap between(ConvexBody first, ConvexBody second) {
        Simplex simplex = Simplex.of(Corner.farthest(
                first, second, second.corners().getFirst().minus(first.corners().getFirst())));
        double scale = size(first) + size(second) + simplex.nearest().length();
        double least = 0;
        for (int step = 0; step < MOST_STEPS; step++) {
            Point nearest = simplex.nearest();
            double distance = nearest.length();
            if (distance <= CLOSE * scale) {
                break;
            }
            Corner next = Corner.farthest(first, second, nearest.times(-1));
            least = Math.max(least, next.difference().dot(nearest) / distance);
            Simplex closer = simplex.with(next);
            if (distance - least <= CLOSE * scale || closer.equals(simplex)) {
                break;
            }
            simplex = closer;
        }
        return rounded(first, second, simplex, CLOSE * scale, least);
    }

    private static Gap rounded(ConvexBody first, ConvexBody second, Simplex simplex, double zero, double least) {
        Point nearest = simplex.nearest();
        double distance = nearest.length() <= zero ? 0 : nearest.length();
        double radii = first.radius() + second.radius();
        Point toward = distance == 0 ? new Point(0, 0, 0) : nearest.times(-1 / distance);
        return new Gap(
                distance - radii,
                simplex.onFirst().plus(toward.times(first.radius())),
                simplex.onSecond().minus(toward.times(second.radius())),
                Math.max(0, distance - least));
    }

    private static double size(ConvexBody body) {
        Point start = body.corners().getFirst();
        return body.corners().stream()
                .mapToDouble(corner -> corner.minus(start).length())
                .max()
                .orElse(0);
    }
}
