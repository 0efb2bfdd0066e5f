package org.brakewright.kernel.tubing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FoldedStripTest {
    private static final double SQUARE = Math.PI / 2;

    /**
     * Two equal legs with one square bend take the stock of A. Ghosh, A. K. Mallik, Manufacturing Science, bending, problem 9,
     * whose layer lies 0.45 of the thickness from the inside; that class has a test against the book's numbers.
     */
    @Test
    void twoLegsTakeTheStockOfTheTextbook() {
        var metal = new RightAngleBend.Metal(280e6, 100e6, 207e9);
        var book = new RightAngleBend(4e-3, 6e-3, metal);
        var strip = new FoldedStrip(List.of(0.07, 0.07), List.of(SQUARE), new SheetBend(6e-3, 4e-3, 0.45));
        assertThat(strip.length()).isCloseTo(book.stock(0.07), within(1e-12));
    }

    static Stream<FoldedStrip> drawn() {
        SplittableRandom random = new SplittableRandom(20261126);
        return Stream.generate(() -> draw(random)).limit(200);
    }

    private static FoldedStrip draw(SplittableRandom random) {
        int bends = random.nextInt(1, 6);
        List<Double> legs = random.doubles(bends + 1, 0.05, 0.2).boxed().toList();
        List<Double> angles = random.doubles(bends, -2, 2).boxed().toList();
        return new FoldedStrip(
                legs,
                angles,
                new SheetBend(
                        random.nextDouble(1e-3, 6e-3), random.nextDouble(1e-3, 4e-3), random.nextDouble(0.3, 0.5)));
    }

    /** Folded back, every leg is as long to its outside corners as it was told. */
    @ParameterizedTest
    @MethodSource("drawn")
    void foldsBackToItsLegs(FoldedStrip strip) {
        Walk walk = Walk.of(strip);
        for (int i = 0; i < strip.legs().size(); i++) {
            assertThat(walk.leg(i)).isCloseTo(strip.legs().get(i), within(1e-12));
        }
    }

    /** Bends are where the flats end, and what is left is the last flat. */
    @ParameterizedTest
    @MethodSource("drawn")
    void linesFlatsAndLengthAgree(FoldedStrip strip) {
        double at = 0;
        for (int i = 0; i < strip.angles().size(); i++) {
            at += strip.flats().get(i);
            assertThat(strip.lines().get(i).start()).isCloseTo(at, within(1e-12));
            at = strip.lines().get(i).end();
        }
        assertThat(strip.length()).isCloseTo(at + strip.flats().getLast(), within(1e-12));
    }

    @Test
    void legsThatTheirBendsEatUpHaveNoFlat() {
        var strip = new FoldedStrip(List.of(0.03, 0.01, 0.03), List.of(SQUARE, SQUARE), new SheetBend(4e-3, 3e-3, 0.4));
        assertThat(strip.flats().get(1)).isCloseTo(0.01 - 2 * 7e-3, within(1e-12));
    }

    @Test
    void oneBendLessThanLegsIsAsked() {
        SheetBend bend = new SheetBend(4e-3, 3e-3, 0.4);
        assertThatThrownBy(() -> new FoldedStrip(List.of(0.03), List.of(SQUARE), bend))
                .hasMessageContaining("one less than legs");
        assertThatThrownBy(() -> new FoldedStrip(List.of(0.03, 0.03), List.of(Math.PI), bend))
                .hasMessageContaining("angle");
    }
}
