package org.brakewright.kernel.friction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.brakewright.kernel.friction.PadContact.UNIFORM_PRESSURE;
import static org.brakewright.kernel.friction.PadContact.UNIFORM_WEAR;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AnnularPadTest {
    private static final double RECOMPUTED = 1e-4;

    /**
     * FROM MEMORY: Shigley's Mechanical Engineering Design, example 16-3, in inches and pounds throughout. 108 deg, friction
     * 0.37, 13,000 lbf in for both pads.
     */
    private static final AnnularPad C6 = new AnnularPad(3.875, 5.50, Math.toRadians(108));

    private static final double C6_FORCE = 13000.0 / 2 / (0.37 * 4.6875);

    /** VERIFIED: A. C. Ugural, Mechanical Engineering Design, example 13.6; D 10 in, d 5 in, 60 deg. */
    private static final AnnularPad C7 = new AnnularPad(2.5, 5, Math.toRadians(60));

    @Test
    void bedsLikeC6() {
        assertThat(C6.effectiveRadius(UNIFORM_WEAR)).isCloseTo(4.6875, withinPercentage(RECOMPUTED));
        assertThat(C6.effectiveRadius(UNIFORM_PRESSURE)).isCloseTo(4.734444444444444, withinPercentage(RECOMPUTED));
        assertThat(C6.torque(UNIFORM_WEAR, C6_FORCE, 0.37)).isCloseTo(6500, withinPercentage(RECOMPUTED));
        assertThat(C6_FORCE).isCloseTo(3748, within(0.5)); // published
        double pressure = C6.greatestPressure(UNIFORM_WEAR, C6_FORCE);
        assertThat(pressure).isCloseTo(315.7505797270189, withinPercentage(RECOMPUTED));
        assertThat(pressure).isCloseTo(315.8, within(0.05)); // published
        assertThat(C6.force(UNIFORM_WEAR, pressure)).isCloseTo(C6_FORCE, withinPercentage(RECOMPUTED));
    }

    /** Answer recomputed from the formula: no figure for this radius is trusted from memory. */
    @Test
    void findsThePressureCenterOfC6() {
        assertThat(C6.pressureCenter(UNIFORM_WEAR)).isCloseTo(4.02372042812878, withinPercentage(RECOMPUTED));
    }

    /** The hydraulic pressure of C6, one cylinder of 1.5 in: 2,120.79 psi, published (from memory) 2,121. */
    @Test
    void needsTheLinePressureOfC6() {
        DiscBrake brake = new DiscBrake(Math.PI * 1.5 * 1.5 / 4, 0.37, C6.effectiveRadius(UNIFORM_WEAR), 0);
        double pressure = brake.pressureFor(13000);
        assertThat(pressure).isCloseTo(2120.791393833143, withinPercentage(RECOMPUTED));
        assertThat(pressure).isCloseTo(2121, within(0.5));
    }

    @Test
    void pressesAndTurnsLikeC7() {
        double force = C7.force(UNIFORM_WEAR, 200);
        assertThat(force).isCloseTo(1308.996938995747, withinPercentage(RECOMPUTED));
        assertThat(force).isCloseTo(1309, within(0.5)); // published
        double oneFace = C7.torque(UNIFORM_WEAR, force, 0.2);
        assertThat(oneFace).isCloseTo(981.7477042468104, withinPercentage(RECOMPUTED));
        assertThat(oneFace).isCloseTo(982, within(0.5)); // published, for one face
        double area = 1;
        double bothFaces = new DiscBrake(area, 0.2, C7.effectiveRadius(UNIFORM_WEAR), 0).torque(force / area);
        assertThat(bothFaces).isCloseTo(1963.4954084936207, withinPercentage(RECOMPUTED)); // recomputed, C* = 2 mu
    }

    /** Closed form: sums over thin rings of the pressure law give the force, the torque and the area. */
    @ParameterizedTest
    @ValueSource(ints = {21, 22})
    void agreesWithSumsOverThinRings(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 20; i++) {
            double inner = random.nextDouble(0.05, 0.12);
            AnnularPad pad = new AnnularPad(inner, inner * random.nextDouble(1.1, 1.9), random.nextDouble(0.5, 2));
            for (PadContact contact : PadContact.values()) {
                double force = rings(pad, contact, 1);
                assertThat(pad.force(contact, 1)).isCloseTo(force, withinPercentage(1e-4));
                assertThat(pad.torque(contact, force, 1)).isCloseTo(rings(pad, contact, 2), withinPercentage(1e-4));
            }
            assertThat(pad.area()).isCloseTo(rings(pad, UNIFORM_PRESSURE, 1), withinPercentage(1e-4));
            assertThat(pad.effectiveRadius(UNIFORM_PRESSURE)).isGreaterThan(pad.effectiveRadius(UNIFORM_WEAR));
        }
    }

    @Test
    void refusesARingInsideOut() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new AnnularPad(0.2, 0.1, 1))
                .withMessageContaining("innerRadius")
                .withMessageContaining("0.2");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new AnnularPad(0.1, 0.2, 7))
                .withMessageContaining("angle");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> EffectiveRadius.uniformWear(0.2, 0.1))
                .withMessageContaining("innerRadius");
    }

    private static double rings(AnnularPad pad, PadContact contact, int power) {
        int count = 2000;
        double step = (pad.outerRadius() - pad.innerRadius()) / count;
        double sum = 0;
        for (int i = 0; i < count; i++) {
            double radius = pad.innerRadius() + (i + 0.5) * step;
            double pressure = contact == UNIFORM_WEAR ? pad.innerRadius() / radius : 1;
            sum += pressure * pad.angle() * Math.pow(radius, power) * step;
        }
        return sum;
    }
}
