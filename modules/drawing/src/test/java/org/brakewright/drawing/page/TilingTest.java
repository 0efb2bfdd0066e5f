package org.brakewright.drawing.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.brakewright.drawing.Bounds;
import org.brakewright.drawing.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Properties of tiles, on contents of many sizes drawn with a fixed seed; 10 mm margins and overlap are the order. */
class TilingTest {
    private static final Offset<Double> EXACT = within(1e-9);

    private static final List<Paper> PAPERS = List.of(Paper.values());

    record Order(Bounds content, Paper paper) {}

    static Stream<Order> orders() {
        Random random = new Random(42);
        return IntStream.range(0, 60).mapToObj(i -> {
            Point corner = new Point(random.nextDouble(-500, 500), random.nextDouble(-500, 500));
            Bounds content = Bounds.at(corner, random.nextDouble(1, 900), random.nextDouble(1, 900));
            return new Order(content, PAPERS.get(i % PAPERS.size()));
        });
    }

    @ParameterizedTest
    @MethodSource("orders")
    void everyPlaceOfTheContentIsOnATile(Order order) {
        Tiling tiling = Tiling.of(order.content, order.paper);
        Random random = new Random(7);
        for (int i = 0; i < 200; i++) {
            Point place = order.content
                    .corner()
                    .plus(random.nextDouble() * order.content.width(), random.nextDouble() * order.content.height());
            assertThat(tiling.tiles()).anyMatch(tile -> tile.window().contains(place));
        }
        assertThat(tiling.tiles().stream().map(Tile::window).reduce(Bounds::union))
                .hasValueSatisfying(all ->
                        assertThat(all.grown(1e-9).contains(order.content)).isTrue());
    }

    @ParameterizedTest
    @MethodSource("orders")
    void neighborsShareTenMillimeters(Order order) {
        for (Tile[] pair : neighbors(Tiling.of(order.content, order.paper))) {
            Bounds one = pair[0].window();
            Bounds two = pair[1].window();
            boolean beside = pair[0].row() == pair[1].row();
            double shared = beside ? one.maxX() - two.minX() : two.maxY() - one.minY();
            assertThat(shared).isCloseTo(10, EXACT);
        }
    }

    @ParameterizedTest
    @MethodSource("orders")
    void registerMarksOfNeighborsCoincideInTheOverlap(Order order) {
        for (Tile[] pair : neighbors(Tiling.of(order.content, order.paper))) {
            String seam = pair[0].name() + "/" + pair[1].name();
            List<RegisterMark> here = marks(pair[0], seam);
            assertThat(here).hasSize(2).isEqualTo(marks(pair[1], seam));
            assertThat(here.getFirst().at().distance(here.getLast().at())).isGreaterThan(50);
            assertThat(here).allSatisfy(mark -> {
                Bounds cross = Bounds.around(mark.at(), 8, 8);
                assertThat(pair[0].window().contains(cross)).isTrue();
                assertThat(pair[1].window().contains(cross)).isTrue();
            });
        }
    }

    @ParameterizedTest
    @MethodSource("orders")
    void noMarkIsWithoutItsTwin(Order order) {
        Tiling tiling = Tiling.of(order.content, order.paper);
        int seams = tiling.rows() * (tiling.columns() - 1) + tiling.columns() * (tiling.rows() - 1);
        assertThat(tiling.tiles()).hasSize(tiling.rows() * tiling.columns());
        assertThat(tiling.tiles().stream().mapToInt(tile -> tile.marks().size()).sum())
                .isEqualTo(4 * seams);
    }

    /** The window of upright A4 is 176 x 217.4 mm: 190 x 259.4 less 14 to the left and 42 below. */
    @ParameterizedTest
    @CsvSource({"176, 217.4, 1, 1, false", "176.1, 217.4, 1, 2, false", "245, 148, 1, 1, true", "342, 217, 1, 2, false"
    })
    void asFewSheetsAsWillDo(double width, double height, int rows, int columns, boolean landscape) {
        Tiling tiling = Tiling.of(Bounds.at(new Point(0, 0), width, height), Paper.A4);
        assertThat(tiling)
                .returns(rows, Tiling::rows)
                .returns(columns, Tiling::columns)
                .returns(landscape, tile -> tile.sheet().landscape());
    }

    /** Margins of the order: 10 mm of both papers of a class, so that each file prints on the other paper too. */
    @ParameterizedTest
    @EnumSource(Paper.class)
    void theFrameKeepsTenMillimetersFromTheEdgesOfBothPapers(Paper paper) {
        for (boolean landscape : new boolean[] {false, true}) {
            Bounds frame = new Sheet(paper, landscape).frame();
            Bounds own = new Sheet(paper, landscape).media();
            Bounds other = new Sheet(paper.partner(), landscape).media();
            assertThat(own.grown(-10 + 1e-9).contains(frame)).isTrue();
            assertThat(frame.width()).isLessThanOrEqualTo(other.width() - 20 + 1e-9);
            assertThat(frame.height()).isLessThanOrEqualTo(other.height() - 20 + 1e-9);
            assertThat(frame.middle().distance(own.middle())).isCloseTo(0, EXACT);
        }
    }

    @Test
    void aDrawingForHundredsOfSheetsIsRefused() {
        assertThatThrownBy(() -> Tiling.of(Bounds.at(new Point(0, 0), 1e6, 1e6), Paper.A4))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("400");
    }

    private static List<RegisterMark> marks(Tile tile, String seam) {
        return tile.marks().stream()
                .filter(mark -> mark.label().startsWith(seam))
                .toList();
    }

    /** Pairs of a tile and the one to its right or below it. */
    private static List<Tile[]> neighbors(Tiling tiling) {
        return tiling.tiles().stream()
                .flatMap(one -> tiling.tiles().stream()
                        .filter(two -> two.row() - one.row() + two.column() - one.column() == 1
                                && two.row() >= one.row()
                                && two.column() >= one.column())
                        .map(two -> new Tile[] {one, two}))
                .toList();
    }
}
