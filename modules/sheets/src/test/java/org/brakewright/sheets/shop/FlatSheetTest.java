package org.brakewright.sheets.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.brakewright.drawing.Bounds;
import org.brakewright.drawing.Circle;
import org.brakewright.drawing.Extent;
import org.brakewright.drawing.Layer;
import org.brakewright.drawing.Point;
import org.brakewright.drawing.Polyline;
import org.brakewright.drawing.outline.Hole;
import org.brakewright.drawing.outline.Outline;
import org.brakewright.drawing.outline.OutlineCheck;
import org.brakewright.sheets.Drawn;
import org.brakewright.sheets.Examples;
import org.junit.jupiter.api.Test;

/**
 * The example's channel by hand: legs 35, 90, 35 mm, t = 3, R = 4, K = 0.41: set-back 7 mm, arc pi/2 (4 + 1.23) = 8.2153,
 * flats 28, 76, 28, so 132 + 2 x 8.2153 = 148.4305 mm long.
 */
class FlatSheetTest {
    private static final double ARC = Math.PI / 2 * (4 + 0.41 * 3);
    private static final String CAR = Examples.text("hill-climber");
    private static final Drawn DRAWN = Drawn.of(Examples.sheet(CAR, "flat-1"));

    private static Polyline edge() {
        return DRAWN.polylines().getFirst();
    }

    @Test
    void theStripIsAsLongAsItsFlatsAndArcs() {
        Bounds edge = Extent.of(List.of(edge()));
        assertThat(edge.width()).isCloseTo(2 * 28 + 76 + 2 * ARC, within(1e-9));
        assertThat(edge.height()).isCloseTo(110, within(1e-9));
    }

    @Test
    void bendLinesStandWhereTheBendsBeginAndEnd() {
        double left = Extent.of(List.of(edge())).minX();
        assertThat(DRAWN.lines().stream()
                        .filter(line -> line.stroke().layer() == Layer.BEND)
                        .map(line -> Math.round((line.from().x() - left) * 1e6) / 1e6))
                .containsExactly(
                        rounded(28 + ARC / 2),
                        rounded(28),
                        rounded(28 + ARC),
                        rounded(104 + 1.5 * ARC),
                        rounded(104 + ARC),
                        rounded(104 + 2 * ARC));
    }

    /** A hole 45 mm from the outside corner of a web of 90 mm lies in the strip's middle. */
    @Test
    void holesKeepTheirPlaceOnTheFoldedPart() {
        Bounds edge = Extent.of(List.of(edge()));
        Point middle = DRAWN.circles().getFirst().centre();
        assertThat(middle.x()).isCloseTo(edge.middle().x(), within(1e-9));
        assertThat(middle.y() - edge.minY()).isCloseTo(23.25, within(1e-9));
        assertThat(DRAWN.circles()).extracting(Circle::radius).startsWith(15.0, 15.0, 4.25);
    }

    @Test
    void theOutlineCanBeCut() {
        List<Hole> holes =
                DRAWN.circles().stream().map(circle -> new Hole("hole", circle)).toList();
        assertThat(OutlineCheck.faults(new Outline("part", edge(), holes))).isEmpty();
    }

    @Test
    void aBendTighterThanTheToolIsRefused() {
        assertThat(Examples.problems(CAR.replace("inside_radius: 4 mm", "inside_radius: 2 mm")))
                .containsExactly("shop.folded[0].inside_radius 2 mm");
    }

    @Test
    void everyFaultIsToldAtOnce() {
        assertThat(Examples.problems(CAR.replace("legs: [35 mm, 90 mm, 35 mm]", "legs: [35 mm, 13 mm, 35 mm]")
                        .replace("inside_radius: 4 mm", "inside_radius: 2.5 mm")))
                .contains("shop.folded[0].inside_radius 2.5 mm", "shop.folded[0].holes[0].along 45.0 mm");
        assertThat(Examples.problems(CAR.replace("legs: [35 mm, 90 mm, 35 mm]", "legs: [35 mm, 14 mm, 35 mm]")))
                .contains("shop.folded[0].legs[1] 14 mm");
        assertThat(Examples.problems(CAR.replace("bends: [90 deg, 90 deg]", "bends: [90 deg]")))
                .containsExactly("shop.folded[0].bends 1");
    }

    @Test
    void aHoleThatCannotBeDrilledIsNamed() {
        assertThat(Examples.problems(
                        CAR.replace("leg: 3, along: 20 mm, across: 20 mm", "leg: 4, along: 20 mm, across: 20 mm")))
                .containsExactly("shop.folded[0].holes[4].leg 4");
        assertThat(Examples.problems(CAR.replace("along: 15 mm, across: 20 mm", "along: 25 mm, across: 2 mm")))
                .containsExactly("shop.folded[0].holes[2].along 25.0 mm", "shop.folded[0].holes[2].across 2.0 mm");
        assertThat(Examples.problems(CAR.replace("across: 86.75 mm", "across: 50 mm")))
                .containsExactly("shop.folded[0].holes[1] ");
    }

    private static double rounded(double value) {
        return Math.round(value * 1e6) / 1e6;
    }
}
