package org.brakewright.kernel.fastener;

/**
 * How bolts or lines of weld spread about their centroid; bolts count by number, welds by length. The spread is given
 * along the pattern's own axes, about which it has no product.
 *
 * @param amount number of bolts, or length of weld in m
 * @param turn of the pattern's own axes, from x to y, rad
 * @param along the first own axis: of each distance squared, summed; the greater
 * @param across the same along the second own axis
 */
record Pattern(double amount, Point center, double turn, double along, double across) {
    /** Spread below this share of the other, and moment below this share of the whole, are rounding. */
    private static final double ROUNDING = 1e-9;

    /**
     * From sums about the centroid.
     *
     * @param spread of x squared, of y squared, and of x times y, summed
     */
    static Pattern of(double amount, Point center, JointLoad.Components spread) {
        double mean = (spread.x() + spread.y()) / 2;
        double half = Math.hypot((spread.x() - spread.y()) / 2, spread.z());
        double turn = Math.atan2(2 * spread.z(), spread.x() - spread.y()) / 2;
        return new Pattern(amount, center, turn, mean + half, Math.max(0, mean - half));
    }

    /** A load's share at a place, as force per bolt or per length of weld. */
    JointLoad.Components share(JointLoad load, Point place) {
        JointLoad central = load.about(center);
        Point arm = place.minus(center);
        Point own = turned(arm.x(), arm.y());
        Point bending = turned(central.moment().x(), central.moment().y());
        double twist = ratio(central.moment().z(), along + across);
        double pull = ratio(bending.x(), across) * own.y() - ratio(bending.y(), along) * own.x();
        return new JointLoad.Components(
                central.force().x() / amount - twist * arm.y(),
                central.force().y() / amount + twist * arm.x(),
                central.force().z() / amount + pull);
    }

    private Point turned(double x, double y) {
        double c = Math.cos(turn);
        double s = Math.sin(turn);
        return new Point(c * x + s * y, -s * x + c * y);
    }

    /** Without spread there is no moment but rounding: the caller has refused such a load. */
    private double ratio(double moment, double spread) {
        return spread <= ROUNDING * along ? 0 : moment / spread;
    }

    /** Whether it can carry the moments of a load: a single bolt cannot, a row cannot be tilted about itself. */
    boolean carries(JointLoad load) {
        JointLoad.Components moment = load.about(center).moment();
        Point bending = turned(moment.x(), moment.y());
        double whole = Math.hypot(Math.hypot(moment.x(), moment.y()), moment.z());
        boolean single = along == 0;
        boolean row = across <= ROUNDING * along;
        return whole == 0 || (!single && !(row && Math.abs(bending.x()) > ROUNDING * whole));
    }
}
