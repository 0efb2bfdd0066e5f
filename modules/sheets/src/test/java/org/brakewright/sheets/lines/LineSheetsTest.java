package org.brakewright.sheets.lines;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.brakewright.drawing.Bounds;
import org.brakewright.drawing.Drawing;
import org.brakewright.drawing.Extent;
import org.brakewright.drawing.Figure;
import org.brakewright.drawing.LineKind;
import org.brakewright.drawing.Point;
import org.brakewright.drawing.Polyline;
import org.brakewright.drawing.Shape;
import org.brakewright.drawing.Table;
import org.brakewright.drawing.Text;
import org.brakewright.drawing.Vertex;
import org.brakewright.sheets.Drawn;
import org.brakewright.sheets.Examples;
import org.brakewright.sheets.Sheet;
import org.junit.jupiter.api.Test;

/**
 * The example's first tube, worked by hand: legs of 150, 260, 130, 350 and 280 mm, four bends of 90 degrees at a radius
 * of 15 mm, so each bend takes 15 mm off both its legs and gives a quarter of a circle, 23.56 mm, back. Flares take
 * 2 mm each, as assumed. What it is bent to follows from springback, which the kernel's own tests hold to their source.
 */
class LineSheetsTest {
    private static final String CAR = Examples.text("hill-climber");
    private static final double QUARTER = 15 * Math.PI / 2;
    private static final double DEVELOPED = 135 + 230 + 100 + 320 + 265 + 4 * QUARTER;

    private final Drawn bend = Drawn.of(Examples.sheet(CAR, "bend-1"));

    @Test
    void theTableIsWhatTheHandGets() {
        assertThat(rows("bend-1"))
                .contains(List.of("1", "135.0 mm", "137.0 mm", "-", "90.4°", "90.0°", "15.0 mm"))
                .contains(List.of("2", "230.0 mm", "390.6 mm", "90.0° right", "90.4°", "90.0°", "15.0 mm"))
                .contains(List.of("4", "320.0 mm", "857.7 mm", "0.0°", "90.4°", "90.0°", "15.0 mm"))
                .contains(List.of("straight after the last bend", "265.0 mm"));
        assertThat(millimetres("bend-1", "cut to, flares included", 1)).isEqualTo(1148.2);
        assertThat(millimetres("bend-1", "length along its middle, seat to seat", 1))
                .isEqualTo(1144.2);
        assertThat(DEVELOPED).isCloseTo(1144.2, within(0.05));
        assertThat(137 + QUARTER + 230).isCloseTo(390.6, within(0.05));
    }

    /** ISO 5456-3: forward and left lie 30 degrees below the level, up is upright, all three equally short. */
    @Test
    void eachStepIsDrawnAsTheTubeThenLies() {
        List<Polyline> bent = tubes(LineKind.CONTINUOUS);
        List<Polyline> straight = tubes(LineKind.DASHED);
        assertThat(straight).hasSize(3);
        List<Point> first = points(bent.getFirst());
        double scale = first.get(0).distance(first.get(1)) / 135;
        assertThat(angle(first.get(0), first.get(1))).as("forward").isCloseTo(-150, within(1e-6));
        List<Point> down = points(straight.getFirst());
        assertThat(angle(down.get(0), down.get(1))).as("down").isCloseTo(-90, within(1e-6));
        assertThat(down.get(0).distance(down.get(1)) / scale)
                .as("all that is not bent yet")
                .isCloseTo(DEVELOPED - 135 - QUARTER, within(1e-6));
        List<Point> left = points(straight.get(1));
        assertThat(angle(left.get(0), left.get(1))).as("left").isCloseTo(-30, within(1e-6));
        // The last leg of the tube that is done runs to the right: 280 mm less one set-back.
        List<Point> last = points(bent.getLast());
        assertThat(angle(last.get(0), last.get(1))).as("right").isCloseTo(150, within(1e-6));
    }

    private List<Polyline> tubes(LineKind kind) {
        return bend.polylines().stream()
                .filter(line -> !line.closed() && line.stroke().kind() == kind)
                .toList();
    }

    private static List<Point> points(Polyline line) {
        return line.vertices().stream().map(Vertex::at).toList();
    }

    private static double angle(Point from, Point to) {
        return Math.toDegrees(Math.atan2(to.y() - from.y(), to.x() - from.x()));
    }

    /** 25 ft of stock, all in one length: seven pieces, what is over, and eight roundings to 0.1 mm. */
    @Test
    void theCutListUsesUpTheStock() {
        List<List<String>> pieces = rows("tube-cut-list").stream()
                .filter(row -> row.getFirst().matches("\\d"))
                .toList();
        assertThat(pieces).hasSize(7);
        for (List<String> piece : pieces) {
            assertThat(millimetres("bend-" + piece.getFirst(), "cut to, flares included", 1))
                    .isEqualTo(millimetres("tube-cut-list", piece.get(1), 2));
        }
        double used = pieces.stream()
                .mapToDouble(piece -> millimetres("tube-cut-list", piece.get(1), 2))
                .sum();
        double lost = Drawn.of(Examples.sheet(CAR, "tube-cut-list")).words().stream()
                .filter(word -> word.contains("taken to lose"))
                .mapToDouble(word -> Double.parseDouble(word.replaceAll(".*lose ([\\d.]+) mm.*", "$1")))
                .sum();
        assertThat(used + 7 * lost + millimetres("tube-cut-list", "left over of 7620.0 mm", 2))
                .isCloseTo(7620, within(0.4));
    }

    private static List<List<String>> rows(String sheet) {
        return Examples.sheet(CAR, sheet).drawings().stream()
                .flatMap(drawing -> drawing.shapes().stream())
                .flatMap(LineSheetsTest::tables)
                .flatMap(table -> table.rows().stream())
                .toList();
    }

    private static Stream<Table> tables(Shape shape) {
        return switch (shape) {
            case Figure figure -> figure.shapes().stream().flatMap(LineSheetsTest::tables);
            case Table table -> Stream.of(table);
            default -> Stream.of();
        };
    }

    /** The number in a column of the row that tells of something. */
    private static double millimetres(String sheet, String what, int column) {
        String found = rows(sheet).stream()
                .filter(row -> row.contains(what))
                .findFirst()
                .orElseThrow()
                .get(column);
        return Double.parseDouble(found.substring(0, found.indexOf(' ')));
    }

    /** Seven tubes have fourteen nuts; five hoses have a socket and a banjo each. */
    @Test
    void fittingsAreCounted() {
        assertThat(rows("fittings"))
                .contains(
                        List.of("14", "nut 3/8-24 UNF for a double flare 45°"),
                        List.of("5", "banjo end"),
                        List.of("5", "socket end"));
    }

    @Test
    void anEndThatDoesNotFitIsMarked() {
        String wrong =
                CAR.replaceFirst("end: \\{to: front tee, form: double_45", "end: {to: front tee, form: single_37");
        assertThat(Drawn.of(Examples.sheet(wrong, "bend-1")).words())
                .anyMatch(word -> word.startsWith("NO: cone angle differs"));
        assertThat(Drawn.of(Examples.sheet(wrong, "fittings")).words()).anyMatch(word -> word.startsWith("NO: "));
        assertThat(Examples.sheet(wrong, "bend-1").drawing().stamp()).isEqualTo("DO NOT CUT: line_joint");
        assertThat(Examples.sheet(wrong, "bend-2").forbidden()).isFalse();
    }

    /** 172 mm by 212 mm is what an upright page of A4 or letter shows between its strips. */
    @Test
    void tablesAreBrokenAtTheEndOfAPageAndHeadingsStayWithThem() {
        List<Drawing> pages = Examples.sheet(CAR, "fittings").drawings();
        assertThat(pages).hasSizeBetween(2, 3).allSatisfy(page -> {
            Bounds room = Extent.of(page.shapes());
            assertThat(room.width()).isLessThan(172.001);
            assertThat(room.height()).isLessThan(212.001);
        });
        assertThat(pages)
                .extracting(page -> ((Figure) page.shapes().getLast()).shapes().getFirst())
                .noneMatch(shape -> shape instanceof Text text && text.height() > 3);
    }

    @Test
    void aCarWithoutRoutesHasNoSuchSheets() {
        assertThat(Examples.sheets(Examples.text("heavy-tourer")))
                .extracting(Sheet::key)
                .doesNotContain("bend-1", "tube-cut-list", "fittings");
    }
}
