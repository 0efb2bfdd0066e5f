package org.brakewright.kernel.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

class RubbedFaceTest {
    private static final double CONDUCTIVITY = 50;
    private static final double DIFFUSIVITY = 50.0 / (7200 * 500);

    /** A thick slab is a half-space for a short stop: row D5 with a depth of ten diffusion lengths; the mean rises by flux over depth. */
    @Test
    void meetsTheHalfSpaceInAThickSlab() {
        double depth = 0.0745;
        RubbedFace face = new RubbedFace(depth, CONDUCTIVITY, DIFFUSIVITY);
        double effusivity = HeatPartition.effusivity(7200, 500, 50);
        for (double t = 0.5; t <= 4; t += 0.5) {
            double mean = (4e6 * t - 0.5e6 * t * t) / (7200 * 500 * depth);
            assertThat(face.excess(4e6, -1e6, t) + mean)
                    .isCloseTo(SingleStop.faceRise(4e6, 4, effusivity, t), withinPercentage(1e-6));
        }
    }

    /** Closed form: a steady flux settles at q d/(3 k). */
    @Test
    void settlesUnderASteadyFlux() {
        RubbedFace face = new RubbedFace(0.005, CONDUCTIVITY, DIFFUSIVITY);
        assertThat(face.excess(1e6, 0, 60)).isCloseTo(1e6 * 0.005 / 150, within(1e-9));
        assertThat(face.excess(1e6, 0, 1e-7)).isBetween(0.0, 0.2);
    }

    /** An independent second method: finite differences in 100 cells. */
    @Test
    void agreesWithFiniteDifferences() {
        double depth = 0.0055;
        RubbedFace face = new RubbedFace(depth, CONDUCTIVITY, DIFFUSIVITY);
        assertThat(face.excess(1.5e6, -0.5e6, 2))
                .isCloseTo(differences(depth, 1.5e6, -0.5e6, 2), withinPercentage(0.2));
        assertThat(face.excess(1.5e6, -0.5e6, 0.3))
                .isCloseTo(differences(depth, 1.5e6, -0.5e6, 0.3), withinPercentage(0.2));
    }

    /** Excess of the face over the mean by explicit differences with steps far below the limit of stability. */
    private static double differences(double depth, double flux, double change, double end) {
        int cells = 100;
        double width = depth / cells;
        double step = 0.2 * width * width / DIFFUSIVITY;
        double[] t = new double[cells];
        double time = 0;
        while (time < end) {
            double dt = Math.min(step, end - time);
            double[] next = t.clone();
            for (int i = 0; i < cells; i++) {
                double in = i == 0 ? (flux + change * (time + dt / 2)) / CONDUCTIVITY : (t[i - 1] - t[i]) / width;
                double out = i == cells - 1 ? 0 : (t[i] - t[i + 1]) / width;
                next[i] += DIFFUSIVITY * dt / width * (in - out);
            }
            t = next;
            time += dt;
        }
        double mean = 0;
        for (double cell : t) {
            mean += cell / cells;
        }
        double face = t[0] + (flux + change * end) / CONDUCTIVITY * width / 2;
        return face - mean;
    }
}
