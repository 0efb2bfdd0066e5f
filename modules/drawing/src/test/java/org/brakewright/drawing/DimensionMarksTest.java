package org.brakewright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DimensionMarksTest {
    /** From (0, 0) to (30, 40): 30 along x, 40 along y, 50 between (3-4-5 triangle). */
    @ParameterizedTest
    @CsvSource({"X, 30, 0", "Y, 40, 90", "BOTH, 50, 53.13010235415598"})
    void itSaysTheSizeAsDrawn(Dimension.Along along, String size, double rotation) {
        Text text = words(new Dimension.Linear(new Point(0, 0), new Point(30, 40), along, 5, ""));
        assertThat(text.words()).isEqualTo(size);
        assertThat(text.rotation()).isCloseTo(rotation, within(1e-9));
    }

    @Test
    void wordsAreNeverUpsideDown() {
        Text text = words(new Dimension.Linear(new Point(30, 40), new Point(0, 0), Dimension.Along.BOTH, 5, ""));
        assertThat(text.rotation()).isCloseTo(53.13010235415598, within(1e-9));
    }

    /** The line is as far from the part as asked: above for a positive offset along x, below for a negative one. */
    @ParameterizedTest
    @CsvSource({"5, 45", "-5, -5"})
    void theLineStandsOffThePart(double offset, double y) {
        List<Mark> marks = Marks.of(
                List.of(new Dimension.Linear(new Point(0, 0), new Point(30, 40), Dimension.Along.X, offset, "")));
        assertThat(marks.stream().filter(Line.class::isInstance).map(Line.class::cast))
                .anySatisfy(line -> {
                    assertThat(line.from().distance(new Point(0, y))).isLessThan(1e-9);
                    assertThat(line.to().distance(new Point(30, y))).isLessThan(1e-9);
                });
    }

    @Test
    void wordsTooLongStandBehindTheArrow() {
        Text text = words(new Dimension.Linear(new Point(0, 0), new Point(3, 0), Dimension.Along.X, 5, ""));
        assertThat(text.start().x()).isGreaterThan(3);
    }

    @Test
    void roundSizesHaveTheirSigns() {
        assertThat(words(new Dimension.Radius(new Point(0, 0), 12.5, 45, "")).words())
                .isEqualTo("R12.5");
        assertThat(words(new Dimension.Diameter(new Point(0, 0), 12.5, 45, "")).words())
                .isEqualTo("⌀25");
        assertThat(words(new Dimension.Diameter(new Point(0, 0), 4, 45, "4 x ⌀8 H7"))
                        .words())
                .isEqualTo("4 x ⌀8 H7");
    }

    @Test
    void wordsOfATableStayInTheirCells() {
        Table table = new Table(
                new Point(0, 0), List.of(10.0, 30.0), 6, List.of(List.of("a", "b"), List.of("far too long", "")));
        List<Mark> marks = Marks.of(List.of(table));
        assertThat(marks.stream().filter(Text.class::isInstance).map(Text.class::cast))
                .hasSize(3)
                .filteredOn(text -> text.start().x() < 10)
                .allSatisfy(text -> assertThat(text.start().x() + text.width()).isLessThan(10));
        assertThat(Extent.of(marks)).isEqualTo(new Bounds(0, -12, 40, 0));
    }

    private static Text words(Dimension dimension) {
        return Marks.of(List.of(dimension)).stream()
                .filter(Text.class::isInstance)
                .map(Text.class::cast)
                .reduce((first, last) -> last)
                .orElseThrow();
    }
}
