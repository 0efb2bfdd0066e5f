package org.brakewright.kernel.structure;

/** How the leading nodes move, and what the ground must add to the loads at each freedom. */
final class Equilibrium {
    private final double[] motion;
    private final double[] added;
    private final double residual;

    Equilibrium(double[] motion, double[] added, double residual) {
        this.motion = motion;
        this.added = added;
        this.residual = residual;
    }

    double[] motion() {
        return motion.clone();
    }

    double added(int freedom) {
        return added[freedom];
    }

    double residual() {
        return residual;
    }
}
