package org.brakewright.kernel.lever;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.brakewright.kernel.lever.PedalLinkage.Axis;
import org.brakewright.kernel.lever.PedalLinkage.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A hanging pedal with its rod level at rest, 300 mm to the pad, 60 mm to the pin, 100 mm of rod: closed forms. */
class PedalLinkageTest {
    private static final double ARM = 0.06;
    private static final double ROD = 0.1;
    private static final Axis AXIS = new Axis(new Point(0, -ARM), 0);
    private static final PedalLinkage PEDAL = new PedalLinkage(new Point(0, -0.3), new Point(0, -ARM), AXIS, ROD);

    static LinkagePosition position(PedalLinkage linkage, double angle) {
        LinkageOutcome outcome = linkage.at(angle);
        assertThat(outcome).isInstanceOf(LinkagePosition.class);
        return (LinkagePosition) outcome;
    }

    @Test
    void atRestTheRatioIsThatOfTheArms() {
        LinkagePosition rest = position(PEDAL, 0);
        assertThat(rest.ratio()).isCloseTo(PedalRatio.fromArms(0.3, ARM), within(1e-12));
        assertThat(rest.padTravel()).isZero();
        assertThat(rest.rodTravel()).isZero();
        assertThat(rest.sideForceShare()).isZero();
    }

    /** Pin at arm (sin a, -cos a): the socket goes arm sin a - rod + sqrt(rod^2 - arm^2 (1 - cos a)^2). */
    @ParameterizedTest
    @ValueSource(doubles = {-0.3, 0.1, 0.35, 0.9})
    void travelsAsTheSliderCrankSays(double angle) {
        LinkagePosition position = position(PEDAL, angle);
        double rise = ARM * (1 - Math.cos(angle));
        double level = Math.sqrt(ROD * ROD - rise * rise);
        assertThat(position.padTravel()).isCloseTo(0.3 * angle, within(1e-15));
        assertThat(position.rodTravel()).isCloseTo(ARM * Math.sin(angle) - ROD + level, within(1e-15));
        assertThat(position.rodAngle()).isCloseTo(-Math.asin(rise / ROD), within(1e-14));
        assertThat(position.sideForceShare()).isCloseTo(rise / level, within(1e-14));
    }

    /** Rod and crank in one line: the socket stands at ROD + ARM from the pivot, ARM below it. */
    @Test
    void goesOverCentre() {
        double dead = Math.PI / 2 - Math.asin(ARM / (ROD + ARM));
        assertThat(PEDAL.at(dead + 0.01))
                .isInstanceOfSatisfying(
                        LinkageOutcome.OverCentre.class,
                        over -> assertThat(over.pedalAngle()).isCloseTo(dead, within(1e-12)));
        assertThat(position(PEDAL, dead - 1e-6).ratio()).isGreaterThan(1e5);
        assertThat(PEDAL.at(3)).isInstanceOf(LinkageOutcome.OverCentre.class);
    }

    /** Pulled back, a rod of 20 mm on a 60 mm arm falls short of the axis once the pin is 20 mm off it: cos a = 2/3. */
    @Test
    void fallsShortOfTheAxis() {
        PedalLinkage shortRod = new PedalLinkage(new Point(0, -0.3), new Point(0, -ARM), AXIS, 0.02);
        assertThat(shortRod.at(-1.0))
                .isInstanceOfSatisfying(
                        LinkageOutcome.OutOfReach.class,
                        shortfall -> assertThat(shortfall.pedalAngle()).isCloseTo(-Math.acos(2.0 / 3), within(1e-12)));
        assertThat(position(shortRod, 1e-3 - Math.acos(2.0 / 3)).rodTravel()).isNegative();
        assertThat(shortRod.at(1.0)).isInstanceOf(LinkageOutcome.OverCentre.class);
    }

    @Test
    void findsTheAngleOfATravel() {
        double travel = position(PEDAL, 0.4).rodTravel();
        assertThat(PEDAL.angleForRodTravel(travel).orElseThrow()).isCloseTo(0.4, within(1e-9));
        assertThat(PEDAL.angleForRodTravel(0).orElseThrow()).isCloseTo(0, within(1e-9));
        assertThat(PEDAL.angleForRodTravel(0.2)).isEmpty();
    }

    /** A floor pedal mirrored left to right turns the other way and does the same. */
    @Test
    void mirroredPedalDoesTheSame() {
        PedalLinkage mirrored =
                new PedalLinkage(new Point(0, -0.3), new Point(0, -ARM), new Axis(new Point(0, -ARM), Math.PI), ROD);
        assertThat(position(mirrored, 0.5).rodTravel())
                .isCloseTo(position(PEDAL, 0.5).rodTravel(), within(1e-15));
        assertThat(position(mirrored, 0.5).ratio())
                .isCloseTo(position(PEDAL, 0.5).ratio(), within(1e-12));
        assertThat(position(mirrored, 0.5).rodAngle())
                .isCloseTo(-position(PEDAL, 0.5).rodAngle(), within(1e-14));
    }

    @Test
    void refusesARodThatPointsAtThePivotOrMissesTheAxis() {
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> new PedalLinkage(new Point(0.3, 0), new Point(ARM, 0), new Axis(new Point(0, 0), 0), ROD))
                .withMessageStartingWith("pushrod arm is ");
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        new PedalLinkage(new Point(0, -0.3), new Point(0, -ARM), new Axis(new Point(0, 0.2), 0), ROD))
                .withMessageStartingWith("pin distance from the axis is ");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PedalLinkage(new Point(0, 0), new Point(0, -ARM), AXIS, ROD))
                .withMessageStartingWith("pad distance from the pivot is ");
    }

    /** Closed form of a 3-4-5 triangle: 400 N along the axis are 500 N along a rod that leans 3 in 4. */
    @Test
    void leaningRodPushesSideways() {
        double lean = Math.atan2(3, 4);
        assertThat(Rod.force(400, lean)).isCloseTo(500, within(1e-10));
        assertThat(Rod.sideForce(400, lean)).isCloseTo(300, within(1e-10));
    }
}
