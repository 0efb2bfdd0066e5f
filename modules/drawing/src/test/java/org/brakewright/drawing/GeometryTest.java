package org.brakewright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Closed forms of circles, and round trips. */
class GeometryTest {
    private static final Offset<Double> EXACT = within(1e-9);

    /** From (10, 0) to (0, 10): turning left by 90 about the origin, by 270 about (10, 10); right by 90 about (10, 10). */
    @ParameterizedTest
    @CsvSource({"90, 0, 0", "270, 10, 10", "-90, 10, 10", "-270, 0, 0"})
    void aRoundEdgeIsPartOfItsCircle(double turn, double x, double y) {
        Edge edge = new Edge(new Point(10, 0), new Point(0, 10), Math.tan(Math.toRadians(turn) / 4));
        Arc arc = edge.arc(Stroke.OUTLINE);
        assertThat(arc.centre().distance(new Point(x, y))).isCloseTo(0, EXACT);
        assertThat(arc.radius()).isCloseTo(10, EXACT);
        assertThat(arc.sweep()).isCloseTo(Math.abs(turn), EXACT);
        assertThat(arc.at(arc.start()).distance(turn > 0 ? edge.from() : edge.to()))
                .isCloseTo(0, EXACT);
        assertThat(edge.length()).isCloseTo(10 * Math.toRadians(Math.abs(turn)), EXACT);
    }

    /** An arc from 45 to 135 degrees has its top at 90, not at its ends; sin 45 = 0.5 sqrt 2. */
    @Test
    void anArcReachesToItsTop() {
        Bounds bounds = Extent.of(List.of(new Arc(new Point(0, 0), 10, 45, 135, Stroke.OUTLINE)));
        assertThat(bounds.maxY()).isCloseTo(10, EXACT);
        assertThat(bounds.minY()).isCloseTo(10 * Math.sqrt(0.5), EXACT);
        assertThat(bounds.width()).isCloseTo(20 * Math.sqrt(0.5), EXACT);
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void whatAFigureDrawsStandsWhereItsPlacementSays(boolean mirrored) {
        Placement placement = new Placement(new Point(5, -3), 30, 2, mirrored);
        Arc arc = new Arc(new Point(1, 2), 3, 20, 100, Stroke.OUTLINE);
        var corners = List.of(Vertex.turning(0, 0, 70), Vertex.of(4, 1));
        Polyline line = new Polyline(corners, false, Stroke.OUTLINE);
        List<Mark> placed = Marks.of(List.of(new Figure(List.of(arc, line), placement)));
        Arc moved = (Arc) placed.getFirst();
        assertThat(moved.passes(moved.centre().direction(placement.apply(arc.at(21)))))
                .isTrue();
        assertThat(moved.passes(moved.centre().direction(placement.apply(arc.at(99)))))
                .isTrue();
        assertThat(moved.sweep()).isCloseTo(80, EXACT);
        assertThat(moved.radius()).isCloseTo(6, EXACT);
        Point centre = ((Polyline) placed.getLast())
                .edges()
                .getFirst()
                .arc(Stroke.OUTLINE)
                .centre();
        Point expected =
                placement.apply(line.edges().getFirst().arc(Stroke.OUTLINE).centre());
        assertThat(centre.distance(expected)).isCloseTo(0, EXACT);
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "-0.00001, 0", "1e7, 10000000", "0.1, 0.1", "1.00005, 1.0001", "-2.50, -2.5", "1e-9, 0"})
    void numbersAreWrittenPlainly(double value, String text) {
        assertThat(Decimal.text(value, 4)).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, 0, -1})
    void aRadiusIsMoreThanNothing(double radius) {
        assertThatThrownBy(() -> new Circle(new Point(0, 0), radius, Stroke.HOLE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("radius");
    }

    /** ISO 128 line widths (from memory): each twice the one before, rounded. */
    @Test
    void dashesFollowTheLineWidth() {
        assertThat(Stroke.HIDDEN.dashes()).hasSize(2);
        assertThat(Stroke.HIDDEN.dashes().getFirst()).isCloseTo(12 * 0.18, EXACT);
        assertThat(Stroke.OUTLINE.dashes()).isEmpty();
    }
}
