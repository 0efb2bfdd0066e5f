package org.brakewright.kernel.tubing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.brakewright.kernel.tubing.SaddleCut.Flat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A tube that meets the side of another. */
class SaddleCutTest {
    /** Geometry: wrapped back on the branch, every point of the edge lies the main tube's radius from the main axis. */
    @ParameterizedTest
    @CsvSource({"25.4, 38.1, 90, 0", "25.4, 38.1, 50, 4", "25.4, 25.4, 35, 0", "19, 60, 140, -12"})
    void wrappedBackItLiesOnTheMainTube(double branch, double main, double degrees, double offset) {
        double angle = Math.toRadians(degrees);
        Point axis = new Point(Math.sin(angle), 0, Math.cos(angle));
        for (Flat flat : new SaddleCut(branch, main, angle, offset).unrolled(72)) {
            double around = flat.across() / (branch / 2);
            Point onBranch =
                    new Point(branch / 2 * Math.cos(around), branch / 2 * Math.sin(around) - offset, flat.up());
            assertThat(onBranch.cross(axis).length()).isCloseTo(main / 2, within(1e-9));
        }
    }

    /** Geometry: square and equal tubes meet in two planes at 45 degrees, the mitre of row G10 of the check values. */
    @Test
    void equalTubesMeetInMitres() {
        SaddleCut saddle = new SaddleCut(25.4, 25.4, Math.PI / 2, 0);
        MitreCut mitre = new MitreCut(25.4, Math.PI / 4);
        for (int degrees = -90; degrees <= 90; degrees += 10) {
            double around = Math.toRadians(degrees);
            assertThat(saddle.edge(around)).isCloseTo(mitre.edge(around), within(1e-9));
        }
    }

    /** Limit: a plane is a tube without end; the edge's height over its mean is then that of the slanted plane. */
    @Test
    void aHugeMainTubeIsAPlane() {
        double angle = Math.toRadians(60);
        SaddleCut saddle = new SaddleCut(20, 2e9, angle, 0);
        MitreCut plane = new MitreCut(20, Math.PI / 2 - angle);
        assertThat(saddle.edge(0) - saddle.edge(Math.PI)).isCloseTo(plane.depth(), within(1e-5));
    }

    @Test
    void refusesABranchThatDoesNotFit() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SaddleCut(30, 25, 1, 0))
                .withMessageContaining("mainDiameter");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SaddleCut(20, 25, 1, 3))
                .withMessageContaining("offset");
        assertThatIllegalArgumentException().isThrownBy(() -> new SaddleCut(20, 25, 1, 0).unrolled(3));
    }
}
