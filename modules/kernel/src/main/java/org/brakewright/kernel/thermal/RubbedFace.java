package org.brakewright.kernel.thermal;

/**
 * How much hotter the rubbed face is than the mean of the metal behind it: a slab insulated at its far side, heated from
 * an even temperature on (H. S. Carslaw, J. C. Jaeger, Conduction of Heat in Solids, ch. III, from memory).
 *
 * <p>The slab is half a solid disc, which is heated from both sides, one cheek of a vented disc, or the wall of a drum. For stops
 * much shorter than depth squared over diffusivity it meets {@link SingleStop#faceRise}.
 *
 * @param depth from the face to the far side, m
 * @param conductivity W/(m K)
 * @param diffusivity m2/s
 */
public record RubbedFace(double depth, double conductivity, double diffusivity) {
    /** A mode that has fallen by e to this power is gone. */
    private static final double GONE = 30;

    private static final int MOST_MODES = 400;

    public RubbedFace {
        Require.positive("depth", depth);
        Require.positive("conductivity", conductivity);
        Require.positive("diffusivity", diffusivity);
    }

    /**
     * Excess of the face over the mean, K, under a flux that changes in a straight line.
     *
     * @param flux at the start, W/m2
     * @param change of the flux, W/m2 each second
     * @param time since the start, s
     */
    public double excess(double flux, double change, double time) {
        double rate = Math.PI * Math.PI * diffusivity / (depth * depth);
        double settled = (flux + change * time) * depth / (3 * conductivity)
                - change * depth * depth * depth / (45 * conductivity * diffusivity);
        double sum = 0;
        for (int n = 1; n <= MOST_MODES; n++) {
            double decay = rate * n * n;
            if (decay * time > GONE) {
                break;
            }
            sum += (flux - change / decay) * Math.exp(-decay * time) / (n * n);
        }
        return settled - 2 * depth / (Math.PI * Math.PI * conductivity) * sum;
    }
}
