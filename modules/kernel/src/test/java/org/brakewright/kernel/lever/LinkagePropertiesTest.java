package org.brakewright.kernel.lever;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiConsumer;
import org.brakewright.kernel.lever.PedalLinkage.Axis;
import org.brakewright.kernel.lever.PedalLinkage.Point;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds for every linkage; linkages are drawn by seeds around the sizes of pedals, any way up. */
class LinkagePropertiesTest {
    private static void everyLinkage(int seed, BiConsumer<PedalLinkage, SplittableRandom> check) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 200; i++) {
            check.accept(any(random), random);
        }
    }

    private static PedalLinkage any(SplittableRandom random) {
        double pinAngle = random.nextDouble(-Math.PI, Math.PI);
        Point pin = around(random.nextDouble(0.03, 0.12), pinAngle);
        double square = pinAngle + (random.nextBoolean() ? 1 : -1) * Math.PI / 2;
        Axis axis = new Axis(
                new Point(pin.x() + random.nextDouble(-0.02, 0.02), pin.y() + random.nextDouble(-0.02, 0.02)),
                square + random.nextDouble(-0.5, 0.5));
        Point pad = around(random.nextDouble(0.2, 0.4), pinAngle + random.nextDouble(-0.5, 0.5));
        return new PedalLinkage(pad, pin, axis, random.nextDouble(0.05, 0.2));
    }

    private static Point around(double distance, double angle) {
        return new Point(distance * Math.cos(angle), distance * Math.sin(angle));
    }

    /** The largest angle that every linkage drawn here still reaches is found by halving. */
    private static LinkagePosition somewhere(PedalLinkage linkage, SplittableRandom random) {
        double angle = random.nextDouble(-0.2, 0.6);
        while (!(linkage.at(angle * 1.01) instanceof LinkagePosition)) {
            angle /= 2;
        }
        return PedalLinkageTest.position(linkage, angle);
    }

    /** Socket along the axis for a pin that has turned, from the distance equation alone. */
    private static double socket(PedalLinkage linkage, double pedalAngle) {
        Point pin = linkage.pin().turned(linkage.sense() * pedalAngle);
        double across = linkage.axis().offset(pin);
        return linkage.axis().along(pin)
                + Math.sqrt(linkage.pushrodLength() * linkage.pushrodLength() - across * across);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void ratioIsTheSlopeOfPadOverRodTravel(int seed) {
        everyLinkage(seed, (linkage, random) -> {
            LinkagePosition here = somewhere(linkage, random);
            double step = 1e-6;
            double rod = socket(linkage, here.pedalAngle() + step) - socket(linkage, here.pedalAngle() - step);
            double pad = 2 * step * linkage.pad().distance();
            assertThat(1 / here.ratio()).isCloseTo(rod / pad, within(1e-7));
            assertThat(here.ratio()).isPositive();
        });
    }

    /** Statics, without any travel: the rod's force times its arm about the pivot holds the foot's moment. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void energyIsNeitherMadeNorLost(int seed) {
        everyLinkage(seed, (linkage, random) -> {
            LinkagePosition here = somewhere(linkage, random);
            Point pin = linkage.pin().turned(linkage.sense() * here.pedalAngle());
            double rodDirection = linkage.axis().direction() + here.rodAngle();
            double arm = Math.abs(pin.x() * Math.sin(rodDirection) - pin.y() * Math.cos(rodDirection));
            double padForce = 100;
            double rodForce = padForce * linkage.pad().distance() / arm;
            assertThat(Rod.force(padForce * here.ratio(), here.rodAngle())).isCloseTo(rodForce, withinPercentage(1e-7));
            assertThat(Rod.sideForce(1, Math.abs(here.rodAngle()))).isCloseTo(here.sideForceShare(), within(1e-12));
        });
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void angleOfTravelInvertsTravelOfAngle(int seed) {
        everyLinkage(seed, (linkage, random) -> {
            LinkagePosition here = somewhere(linkage, random);
            assertThat(linkage.angleForRodTravel(here.rodTravel()).orElseThrow())
                    .isCloseTo(here.pedalAngle(), within(1e-6));
        });
    }

    /** Where a linkage says that it turns back, the socket's travel has its top; before, it always rises. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void risesUpToOverCentre(int seed) {
        everyLinkage(seed, (linkage, random) -> {
            LinkageOutcome outcome = linkage.at(6.28);
            assertThat(outcome).isInstanceOf(LinkageOutcome.OverCentre.class);
            double top = ((LinkageOutcome.OverCentre) outcome).pedalAngle();
            double travel = 0;
            for (int i = 1; i < 50; i++) {
                double next = PedalLinkageTest.position(linkage, top * i / 50).rodTravel();
                assertThat(next).isGreaterThan(travel);
                travel = next;
            }
            assertThat(socket(linkage, top)).isGreaterThan(socket(linkage, top * 0.999));
            assertThat(socket(linkage, top)).isGreaterThan(socket(linkage, top * 1.001));
        });
    }

    /**
     * Driven ahead, a linkage always goes over centre before its rod falls short; pulled back, it may end either way, and
     * where it falls short, the pin is a rod's length away from the axis.
     */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void fallsShortAtARodsLength(int seed) {
        AtomicInteger shortfalls = new AtomicInteger();
        everyLinkage(seed, (linkage, random) -> {
            if (linkage.at(-6.28) instanceof LinkageOutcome.OutOfReach shortfall) {
                shortfalls.incrementAndGet();
                Point pin = linkage.pin().turned(linkage.sense() * shortfall.pedalAngle());
                assertThat(Math.abs(linkage.axis().offset(pin))).isCloseTo(linkage.pushrodLength(), within(1e-12));
            }
        });
        assertThat(shortfalls).hasPositiveValue();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void turningTheWholePictureChangesNothing(int seed) {
        everyLinkage(seed, (linkage, random) -> {
            double turn = random.nextDouble(-3, 3);
            PedalLinkage turned = new PedalLinkage(
                    linkage.pad().turned(turn),
                    linkage.pin().turned(turn),
                    new Axis(
                            linkage.axis().through().turned(turn),
                            linkage.axis().direction() + turn),
                    linkage.pushrodLength());
            LinkagePosition here = somewhere(linkage, random);
            LinkagePosition there = PedalLinkageTest.position(turned, here.pedalAngle());
            assertThat(there.rodTravel()).isCloseTo(here.rodTravel(), within(1e-12));
            assertThat(there.ratio()).isCloseTo(here.ratio(), withinPercentage(1e-6));
        });
    }
}
