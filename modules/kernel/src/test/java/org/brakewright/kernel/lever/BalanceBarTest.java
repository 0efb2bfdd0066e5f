package org.brakewright.kernel.lever;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.kernel.Printed.assertPrinted;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Constructed row B15 of the check values, recomputed: statics of a three-force bar (F. Puhn; formula-student reports).
 * Clevises 63.5 mm apart, the bearing 27.0 mm from the front one.
 */
class BalanceBarTest {
    private static final double SPACING = 63.5e-3;
    private static final BalanceBar BAR = new BalanceBar(SPACING, SPACING / 2 - 27.0e-3);

    @Test
    void splitsThePush() {
        assertPrinted(BAR.frontShare(), "0.574803");
        assertPrinted(2340 * BAR.frontShare(), "1345.04");
        assertPrinted(2340 * (1 - BAR.frontShare()), "994.961");
        assertPrinted(BAR.adjusted(1, 0.001).frontShare(), "0.590551");
        assertThat(BalanceBar.offsetFor(BAR.frontShare(), SPACING)).isCloseTo(BAR.offset(), within(1e-16));
    }

    @Test
    void travelsAndTilts() {
        double bearing = BAR.bearingTravel(0.011, 0.008);
        assertPrinted(bearing * 1e3, "9.72441");
        assertPrinted(Math.toDegrees(BAR.tilt(0.011, 0.008)), "2.70488");
        assertPrinted(2340 * bearing, "22.7551");
    }

    @Test
    void setBackPinsGiveTheLaggingSideMore() {
        double tilt = BAR.tilt(0.011, 0.008);
        assertPrinted(BAR.frontShare(new BarAttitude(tilt, 0.006, 0, 0)), "0.570339");
        assertPrinted(BAR.frontShare(new BarAttitude(tilt, 0, 0, 0)), "0.574803");
    }

    /**
     * Closed form: a level bar whose pins lie d behind the bearing. The line of a rod that leans by f crosses the
     * bearing's line d tan f nearer the bearing.
     */
    @ParameterizedTest
    @CsvSource({"0.1, 0", "0, 0.1", "0.1, -0.05"})
    void leaningRodsActWhereTheirLinesCross(double frontLean, double rearLean) {
        double front = 27.0e-3 - 6e-3 * Math.tan(frontLean);
        double rear = 36.5e-3 - 6e-3 * Math.tan(rearLean);
        assertThat(BAR.frontShare(new BarAttitude(0, 6e-3, frontLean, rearLean)))
                .isCloseTo(rear / (front + rear), within(1e-12));
    }

    /** Closed form: 8 mm and 63.5 mm x tan 15 deg make 25.01 mm; a master of 30 mm still has room, one of 25 mm has not. */
    @Test
    void frontCircuitLost() {
        double largest = Math.toRadians(15);
        FailedBar tilted = BAR.failed(BarEnd.FRONT, 0.008, 0.030, largest);
        assertThat(tilted.stop()).isEqualTo(FailedBar.Stop.ARTICULATION);
        assertThat(tilted.frontTravel()).isCloseTo(0.008 + 0.0170148, within(1e-7));
        assertThat(tilted.tilt()).isCloseTo(largest, within(1e-12));
        assertThat(tilted.liveShare()).isEqualTo(1);
        FailedBar bottomed = BAR.failed(BarEnd.FRONT, 0.008, 0.025, largest);
        assertThat(bottomed.stop()).isEqualTo(FailedBar.Stop.MASTER_BOTTOMED);
        assertThat(bottomed.frontTravel()).isEqualTo(0.025);
        assertThat(bottomed.liveShare()).isCloseTo(27.0 / 63.5, within(1e-12));
        assertThat(bottomed.bearingTravel()).isCloseTo((36.5 * 0.025 + 27.0 * 0.008) / 63.5, within(1e-12));
    }

    /** The mirror image: rear lost on a bar set the other way is front lost, with the tilt's sign turned. */
    @Test
    void rearCircuitLostIsTheMirrorImage() {
        BalanceBar mirrored = new BalanceBar(SPACING, -BAR.offset());
        for (double stroke : new double[] {0.025, 0.030}) {
            FailedBar front = BAR.failed(BarEnd.FRONT, 0.008, stroke, 0.26);
            FailedBar rear = mirrored.failed(BarEnd.REAR, 0.008, stroke, 0.26);
            assertThat(rear.bearingTravel()).isCloseTo(front.bearingTravel(), within(1e-15));
            assertThat(rear.tilt()).isCloseTo(-front.tilt(), within(1e-15));
            assertThat(rear.liveShare()).isCloseTo(front.liveShare(), within(1e-15));
            assertThat(rear.stop()).isEqualTo(front.stop());
        }
    }

    @Test
    void refusesABearingPastTheClevis() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new BalanceBar(0.06, 0.03))
                .withMessageStartingWith("offset is 0.03");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new BalanceBar(0, 0))
                .withMessageStartingWith("clevisSpacing is ");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new BarAttitude(Double.NaN, 0, 0, 0))
                .withMessageStartingWith("tilt is ");
    }

    /** Bars drawn by seeds: force times travel in equals force times travel out, and more offset is more front. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void energyIsNeitherMadeNorLost(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 200; i++) {
            double spacing = random.nextDouble(0.04, 0.1);
            BalanceBar bar = new BalanceBar(spacing, spacing * random.nextDouble(-0.45, 0.44));
            double push = random.nextDouble(100, 5000);
            double front = random.nextDouble(0, 0.03);
            double rear = random.nextDouble(0, 0.03);
            double out = push * bar.frontShare() * front + push * (1 - bar.frontShare()) * rear;
            assertThat(push * bar.bearingTravel(front, rear)).isCloseTo(out, within(1e-12 * push));
            assertThat(bar.adjusted(0.5, 0.001 * spacing).frontShare()).isGreaterThan(bar.frontShare());
            assertThat(bar.frontShare(new BarAttitude(bar.tilt(front, rear), 0, 0, 0)))
                    .isCloseTo(bar.frontShare(), within(1e-12));
        }
    }
}
