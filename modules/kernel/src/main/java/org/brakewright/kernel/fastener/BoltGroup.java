package org.brakewright.kernel.fastener;

import java.util.List;

/**
 * Bolts of one size in a stiff bracket: each takes shear in proportion to its distance from the centroid, and tension
 * as if the joint did not open. Where it opens the bracket turns about its edge, and the true tension differs.
 *
 * <p>Source: Shigley's Mechanical Engineering Design, 9th ed., section 8-12.
 */
public record BoltGroup(List<Point> bolts) {
    public BoltGroup {
        bolts = List.copyOf(bolts);
        Require.that(!bolts.isEmpty(), "bolts", bolts.size(), "must hold a bolt");
    }

    /** The centroid of the bolts. */
    public Point center() {
        return pattern().center();
    }

    /**
     * What each bolt takes, in their order. A moment that the group cannot carry, as any on a single bolt, is refused.
     */
    public List<BoltForce> share(JointLoad load) {
        Pattern pattern = pattern();
        Require.that(pattern.carries(load), "bolts", bolts.size(), "must be spread out to carry the moment");
        return bolts.stream()
                .map(bolt -> pattern.share(load, bolt))
                .map(force -> new BoltForce(force.x(), force.y(), force.z()))
                .toList();
    }

    private Pattern pattern() {
        int n = bolts.size();
        Point center = new Point(
                bolts.stream().mapToDouble(Point::x).sum() / n,
                bolts.stream().mapToDouble(Point::y).sum() / n);
        double x = 0;
        double y = 0;
        double product = 0;
        for (Point bolt : bolts) {
            Point arm = bolt.minus(center);
            x += arm.x() * arm.x();
            y += arm.y() * arm.y();
            product += arm.x() * arm.y();
        }
        return Pattern.of(n, center, new JointLoad.Components(x, y, product));
    }
}
