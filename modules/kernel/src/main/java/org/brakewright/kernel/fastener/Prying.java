package org.brakewright.kernel.fastener;

/**
 * A flange that is pulled up at its root and bears on its outer edge prises the bolt between them.
 *
 * <p>Maintainer's notes. The flange is an even beam: held in slope at the root (which moves), in place at the bolt, in
 * place at the edge. Slope at the bolt from the outer part {@code Q a2/3EI}; over the inner part the slope must fall to
 * zero: {@code Q a2/3 + Q a b = P b2/2}. A bolt that gives way is prised less, so this is the safe side. Own
 * derivation, held against the frame solver.
 *
 * @param rootToBolt m
 * @param boltToEdge m
 */
public record Prying(double rootToBolt, double boltToEdge) {
    public Prying {
        Require.positive("rootToBolt", rootToBolt);
        Require.positive("boltToEdge", boltToEdge);
    }

    /** The force at the edge over the pull, which the bolt carries on top of the pull. */
    public double ratio() {
        return 3 * rootToBolt * rootToBolt / (2 * boltToEdge * (boltToEdge + 3 * rootToBolt));
    }

    /**
     * Tension in the bolt, N.
     *
     * @param pull that comes to this bolt, N
     */
    public double boltTension(double pull) {
        return pull * (1 + ratio());
    }

    /**
     * The greatest bending moment of the flange, N m: at the root or at the bolt.
     *
     * @param pull that comes to this bolt, N
     */
    public double flangeMoment(double pull) {
        double atBolt = ratio() * pull * boltToEdge;
        return Math.max(atBolt, Math.abs(pull * rootToBolt - atBolt));
    }
}
