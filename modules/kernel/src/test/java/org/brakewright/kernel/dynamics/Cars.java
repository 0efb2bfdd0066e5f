package org.brakewright.kernel.dynamics;

import java.util.SplittableRandom;

/** Cars drawn by a seed; ranges are ours and wider than what one-off cars have. */
final class Cars {
    private Cars() {}

    static AxleLoads any(SplittableRandom random) {
        double weight = random.nextDouble(4e3, 3e4);
        double rear = random.nextDouble(0.3, 0.7);
        return new AxleLoads(
                (1 - rear) * weight, rear * weight, random.nextDouble(1.8, 3.5), random.nextDouble(0.3, 0.8));
    }

    /** A car of weight 1 from the literature's psi (rear share at rest) and chi (CG height over wheelbase). */
    static AxleLoads ofRatios(double psi, double chi) {
        return new AxleLoads(1 - psi, psi, 1, chi);
    }
}
