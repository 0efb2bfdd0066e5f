package org.brakewright.kernel.clutch;

/**
 * A coned disc spring that presses near its outer edge, rests on a ring near its inner edge and is turned about that ring
 * by fingers: the spring of a pushed clutch.
 *
 * <p>Model: by work, a force at the pressing radius does what the edge force of the disc does on a proportional way; the
 * fingers are a lever about the ring. Source: balance of work over the formula of {@link BellevilleSpring}.
 *
 * @param disc the closed ring outside the slots
 * @param pressRadius where it presses on the plate, m
 * @param fulcrumRadius of the ring about which it turns, less than the pressing radius, m
 * @param fingerRadius where the release bearing pushes, less than the ring's, m
 */
public record DiaphragmSpring(BellevilleSpring disc, double pressRadius, double fulcrumRadius, double fingerRadius) {
    public DiaphragmSpring {
        Demand.positive("fingerRadius", fingerRadius);
        Demand.within("fulcrumRadius", fulcrumRadius, fulcrumRadius > fingerRadius, "more than fingerRadius");
        Demand.within("pressRadius", pressRadius, pressRadius > fulcrumRadius, "more than fulcrumRadius");
    }

    /** Force (N) on the plate at a deflection (m) from the free cone, measured at the pressing radius. */
    public double force(double deflection) {
        double edgesPerPress = (disc.outerRadius() - disc.innerRadius()) / (pressRadius - fulcrumRadius);
        return edgesPerPress * disc.force(deflection * edgesPerPress);
    }

    /** Travel of the finger tips over lift at the pressing radius; also force on the plate over force at the tips. */
    public double fingerRatio() {
        return (fulcrumRadius - fingerRadius) / (pressRadius - fulcrumRadius);
    }
}
