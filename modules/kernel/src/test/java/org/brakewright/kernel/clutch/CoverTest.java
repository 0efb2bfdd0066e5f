package org.brakewright.kernel.clutch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The cover's balance in closed form, and the curve through points against another program's. */
class CoverTest {
    private static final DiaphragmSpring SPRING =
            new DiaphragmSpring(new BellevilleSpring(0.110, 0.086, 0.0025, 0.0042, 206e9, 0.3), 0.108, 0.0885, 0.024);
    private static final SprungCover COVER = new SprungCover(SPRING, 0.0032, 0.0008, 2.0e6);

    @Test
    void nothingHappensBeforeTheBearingPushes() {
        CoverPoint engaged = COVER.at(0);
        assertThat(engaged.bearingForce()).isZero();
        assertThat(engaged.bearingTravel()).isZero();
        assertThat(engaged.clampForce()).isEqualTo(SPRING.force(0.0032));
    }

    /** Once the cushion is open the fingers carry the spring: force = S/i, and the tips have gone i u + F/k. */
    @Test
    void fingersCarryTheSpringOnceTheCushionIsOpen() {
        CoverPoint open = COVER.at(0.0008);
        double ratio = 64.5 / 19.5;
        assertThat(open.clampForce()).isZero();
        assertThat(open.bearingForce()).isCloseTo(SPRING.force(0.0040) / ratio, within(1e-9));
        assertThat(open.bearingTravel()).isCloseTo(ratio * 0.0008 + open.bearingForce() / 2.0e6, within(1e-15));
    }

    @Test
    void travelRisesAllTheWay() {
        for (double lift = 0; lift < 0.003; lift += 1e-5) {
            assertThat(COVER.at(lift + 1e-5).bearingTravel())
                    .isGreaterThan(COVER.at(lift).bearingTravel());
        }
    }

    /** A worn plate lets the spring come back: over its valley it clamps harder, and the tips rise by the finger ratio. */
    @Test
    void wearBringsTheSpringBack() {
        assertThat(COVER.worn(0.0012).clampForce()).isEqualTo(SPRING.force(0.0020));
        assertThat(COVER.fingerRise(0.0012)).isCloseTo(0.0012 * 64.5 / 19.5, within(1e-15));
        assertThatThrownBy(() -> COVER.worn(0.0032)).hasMessageContaining("wear is 0.0032");
    }

    /** Inner pieces by another program: scipy 1.17.1, interpolate.PchipInterpolator, which has other ends. */
    @ParameterizedTest
    @CsvSource({
        "1.5, 498.27871565706715",
        "3.0, 1056.2378167641327",
        "3.9, 1247.3746588693957",
        "5.0, 1232.0754716981132"
    })
    void curveAgreesWithAnotherProgram(double travel, double force) {
        assertThat(curve().force(travel)).isCloseTo(force, within(1e-9));
    }

    @Test
    void curveNeverLeavesItsNeighbours() {
        double[] travels = {0, 1, 2.5, 4, 6, 9};
        double[] forces = {0, 300, 900, 1250, 1200, 1100};
        for (int i = 1; i < travels.length; i++) {
            assertThat(curve().force(travels[i])).isCloseTo(forces[i], within(1e-9));
            for (double part = 0.05; part < 1; part += 0.05) {
                assertThat(curve().force(travels[i - 1] + part * (travels[i] - travels[i - 1])))
                        .isBetween(Math.min(forces[i - 1], forces[i]), Math.max(forces[i - 1], forces[i]));
            }
        }
    }

    @Test
    void curveSaysWhereItEnds() {
        assertThat(curve().force(-1)).isZero();
        assertThat(curve().force(20)).isEqualTo(1100);
        assertThat(curve().beyondData(9)).isFalse();
        assertThat(curve().beyondData(9.1)).isTrue();
        assertThat(new ForceCurve(List.of(new ForceCurve.Point(2, 100))).force(0.5))
                .isCloseTo(25, within(1e-12));
    }

    @Test
    void curveRefusesPointsThatGoBack() {
        assertThatThrownBy(() -> new ForceCurve(List.of())).hasMessageContaining("at least one point");
        assertThatThrownBy(() -> new ForceCurve(List.of(new ForceCurve.Point(2, 100), new ForceCurve.Point(2, 120))))
                .hasMessageContaining("travel is 2.0; allowed is more than 2.0");
        assertThatThrownBy(() -> new ForceCurve(List.of(new ForceCurve.Point(2, -1))))
                .hasMessageContaining("force");
    }

    private static ForceCurve curve() {
        return new ForceCurve(List.of(
                new ForceCurve.Point(1, 300),
                new ForceCurve.Point(2.5, 900),
                new ForceCurve.Point(4, 1250),
                new ForceCurve.Point(6, 1200),
                new ForceCurve.Point(9, 1100)));
    }
}
