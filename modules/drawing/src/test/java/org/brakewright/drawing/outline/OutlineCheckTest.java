package org.brakewright.drawing.outline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.brakewright.drawing.Circle;
import org.brakewright.drawing.Contour;
import org.brakewright.drawing.Point;
import org.brakewright.drawing.Polyline;
import org.brakewright.drawing.Stroke;
import org.brakewright.drawing.Vertex;
import org.junit.jupiter.api.Test;

/** Outlines whose faults can be seen by eye; places by closed form. */
class OutlineCheckTest {
    private static final Contour SQUARE = closed(0, 0, 100, 0, 100, 100, 0, 100);

    @Test
    void aPlateWithHolesApartHasNoFault() {
        assertThat(faults(SQUARE, circle(20, 20, 10), circle(60, 20, 10), closed(40, 50, 60, 50, 50, 70)))
                .isEmpty();
    }

    /** The first and third edges of the bow tie cross in its middle. */
    @Test
    void aBowTieIsNamedWithItsEdgesAndPlace() {
        assertThat(faults(closed(0, 0, 100, 80, 100, 0, 0, 80)))
                .containsExactly(new OutlineFault.Crossing("part", 1, "part", 3, new Point(50, 40)));
    }

    @Test
    void aCornerOnAnotherEdgeIsACrossing() {
        assertThat(faults(closed(0, 0, 100, 0, 100, 50, 50, 0, 0, 50)))
                .contains(new OutlineFault.Crossing("part", 1, "part", 3, new Point(50, 0)));
    }

    /** The way back covers the way there from (50, 0) to (100, 0): its middle is (75, 0). */
    @Test
    void anEdgeThatFoldsBackIsACrossing() {
        assertThat(faults(closed(0, 0, 100, 0, 50, 0, 50, 50)))
                .contains(new OutlineFault.Crossing("part", 1, "part", 2, new Point(75, 0)));
    }

    @Test
    void anOpenOutlineTellsItsGap() {
        var open =
                Polyline.open(Stroke.OUTLINE, new Point(0, 0), new Point(100, 0), new Point(100, 100), new Point(3, 4));
        assertThat(faults(open)).containsExactly(new OutlineFault.NotClosed("part", 5));
    }

    @Test
    void anOpenLineThatComesHomeIsClosed() {
        var home =
                Polyline.open(Stroke.OUTLINE, new Point(0, 0), new Point(100, 0), new Point(100, 100), new Point(0, 0));
        assertThat(faults(home)).isEmpty();
    }

    @Test
    void twoEqualCornersAreAnEdgeWithoutLength() {
        assertThat(faults(closed(0, 0, 100, 0, 100, 0, 100, 100)))
                .containsExactly(new OutlineFault.ZeroEdge("part", 2, new Point(100, 0)));
    }

    @Test
    void twoStraightEdgesBoundNothing() {
        assertThat(faults(closed(0, 0, 100, 0))).containsExactly(new OutlineFault.NoArea("part"));
    }

    @Test
    void twoRoundEdgesBoundALens() {
        var lens = new Polyline(List.of(Vertex.turning(0, 0, 90), Vertex.turning(100, 0, 90)), true, Stroke.OUTLINE);
        assertThat(faults(lens, circle(50, 0, 10))).isEmpty();
    }

    /**
     * A half circle of radius 50 about (50, 100), from (100, 100) to (0, 100), that turns right hangs into the plate
     * down to (50, 50): a hole that the straight edge would clear now crosses it.
     */
    @Test
    void roundEdgesCountAsRound() {
        var plate = List.of(Vertex.of(0, 0), Vertex.of(100, 0), Vertex.turning(100, 100, -180), Vertex.of(0, 100));
        List<OutlineFault> faults = faults(new Polyline(plate, true, Stroke.OUTLINE), circle(50, 45, 10));
        assertThat(faults)
                .hasSize(2)
                .allSatisfy(fault -> assertThat(fault).isInstanceOfSatisfying(OutlineFault.Crossing.class, crossing -> {
                    assertThat(crossing.contour()).isEqualTo("hole 1");
                    assertThat(crossing.otherEdge()).isEqualTo(3);
                    assertThat(crossing.at().distance(new Point(50, 100))).isBetween(49.99, 50.01);
                    assertThat(crossing.at().distance(new Point(50, 45))).isBetween(9.99, 10.01);
                }));
        assertThat(faults(SQUARE, circle(50, 45, 10))).isEmpty();
    }

    @Test
    void aHoleOutsideIsNamed() {
        assertThat(faults(SQUARE, circle(200, 50, 10))).containsExactly(new OutlineFault.HoleOutside("hole 1", "part"));
    }

    @Test
    void aHoleWithinAHoleIsNamed() {
        assertThat(faults(SQUARE, circle(50, 50, 10), circle(50, 50, 20)))
                .containsExactly(new OutlineFault.HoleInHole("hole 1", "hole 2"));
    }

    /** Squares of 20 from (10, 10) and (20, 20) cross at (30, 20) and (20, 30). */
    @Test
    void holesThatOverlapAreNamedWithBothPlaces() {
        assertThat(faults(SQUARE, closed(10, 10, 30, 10, 30, 30, 10, 30), closed(20, 20, 40, 20, 40, 40, 20, 40)))
                .containsExactlyInAnyOrder(
                        new OutlineFault.Crossing("hole 1", 2, "hole 2", 1, new Point(30, 20)),
                        new OutlineFault.Crossing("hole 1", 3, "hole 2", 4, new Point(20, 30)));
    }

    @Test
    void allFaultsAreToldAtOnce() {
        assertThat(faults(closed(0, 0, 100, 80, 100, 80, 100, 0, 0, 80), circle(300, 0, 5), closed(0, 0, 1, 1)))
                .extracting(fault -> fault.getClass().getSimpleName())
                .contains("Crossing", "ZeroEdge", "HoleOutside", "NoArea");
    }

    private static List<OutlineFault> faults(Contour contour, Contour... holes) {
        var named = Stream.iterate(0, i -> i + 1)
                .limit(holes.length)
                .map(i -> new Hole("hole " + (i + 1), holes[i]))
                .toList();
        return OutlineCheck.faults(new Outline("part", contour, named));
    }

    private static Contour circle(double x, double y, double radius) {
        return new Circle(new Point(x, y), radius, Stroke.HOLE);
    }

    private static Contour closed(double... places) {
        Point[] corners = new Point[places.length / 2];
        for (int i = 0; i < corners.length; i++) {
            corners[i] = new Point(places[2 * i], places[2 * i + 1]);
        }
        return Polyline.closed(Stroke.OUTLINE, corners);
    }
}
