package org.brakewright.drawing.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.brakewright.drawing.Bounds;
import org.brakewright.drawing.Circle;
import org.brakewright.drawing.Demo;
import org.brakewright.drawing.Drawing;
import org.brakewright.drawing.Extent;
import org.brakewright.drawing.Layer;
import org.brakewright.drawing.Mark;
import org.brakewright.drawing.Point;
import org.brakewright.drawing.Text;
import org.brakewright.drawing.TitleBlock;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class PagesTest {
    @ParameterizedTest
    @CsvSource({"130, 150, 1", "245, 148, 3", "300, 300, 5"})
    void severalTilesHaveAMapBeforeThem(double width, double height, int pages) {
        List<Page> laid = Pages.of(Demo.plate(width, height), Paper.A4);
        assertThat(laid).hasSize(pages);
        assertThat(laid.getFirst().name()).isEqualTo(pages > 1 ? "overview" : "R1C1");
    }

    /** A map and two tiles, then a page of its own: whoever holds one knows how many there are. */
    @Test
    void pagesOfDrawingsThatBelongTogetherAreCountedThrough() {
        List<Page> laid = Pages.of(List.of(Demo.plate(245, 148), Demo.plate(130, 150)), Paper.A4);
        assertThat(laid)
                .extracting(PagesTest::number)
                .containsExactly("1 of 4: overview", "2 of 4: tile R1C1", "3 of 4: tile R1C2", "4 of 4: whole drawing");
    }

    private static String number(Page page) {
        return page.furniture().stream()
                .filter(Text.class::isInstance)
                .map(mark -> ((Text) mark).words())
                .filter(words -> words.matches("\\d+ of \\d+: .*"))
                .findFirst()
                .orElseThrow();
    }

    /** What stands at a place of the drawing stands at the same place of the tile's window on paper, in true size. */
    @Test
    void everyTileShowsItsPartInPlace() {
        Drawing drawing = Demo.plate(300, 300);
        List<Page> pages = Pages.of(drawing, Paper.A4);
        List<Tile> tiles = Pages.tiling(drawing, Paper.A4).tiles();
        assertThat(tiles).hasSize(4);
        for (int i = 0; i < tiles.size(); i++) {
            Page page = pages.get(i + 1);
            Point corner = tiles.get(i).window().corner();
            List<Circle> circles = page.artwork().stream()
                    .filter(Circle.class::isInstance)
                    .map(Circle.class::cast)
                    .toList();
            List<Point> expected = Stream.concat(
                            Stream.of(new Point(150, 150)),
                            tiles.get(i).marks().stream().map(RegisterMark::at))
                    .map(at -> at.plus(
                            page.window().minX() - corner.x(), page.window().minY() - corner.y()))
                    .toList();
            assertThat(page.name()).isEqualTo(tiles.get(i).name());
            assertThat(circles)
                    .hasSize(expected.size())
                    .allSatisfy(circle -> assertThat(expected)
                            .anySatisfy(at ->
                                    assertThat(at.distance(circle.centre())).isLessThan(1e-9)));
            assertThat(circles.getFirst().radius()).isEqualTo(12.5);
        }
    }

    /** All that stands around the window keeps to the frame, at least 10 mm from the edge. */
    @ParameterizedTest
    @EnumSource(Paper.class)
    void furnitureKeepsToTheFrame(Paper paper) {
        assertThat(Pages.of(Demo.plate(900, 500), paper)).allSatisfy(page -> {
            assertThat(page.media().grown(-10 + 1e-9).contains(Extent.of(page.furniture())))
                    .isTrue();
            assertThat(page.media().grown(-10 + 1e-9).contains(page.window())).isTrue();
        });
    }

    /** Nothing of the furniture but the frames reaches into the window. */
    @ParameterizedTest
    @EnumSource(Paper.class)
    void wordsOfTheFurnitureStayOutOfTheWindow(Paper paper) {
        Page page = Pages.of(Demo.plate(130, 150), paper).getFirst();
        assertThat(page.furniture().stream().filter(Text.class::isInstance))
                .isNotEmpty()
                .allSatisfy(text -> {
                    Bounds words = Extent.of(List.of(text));
                    assertThat(words.maxX() < page.window().minX()
                                    || words.maxY() < page.window().minY())
                            .isTrue();
                });
    }

    @ParameterizedTest
    @CsvSource({"NO", "'DO NOT CUT: the arm yields at the stop load, and the bracket tears out at half of that'"})
    void theStampStaysInTheWindowOfEveryPage(String words) {
        assertThat(Pages.of(Demo.plate(300, 300).stamped(words), Paper.A4))
                .hasSize(5)
                .allSatisfy(page -> {
                    List<Mark> stamp = stamp(page);
                    assertThat(stamp).isNotEmpty();
                    assertThat(page.window().contains(Extent.of(stamp))).isTrue();
                });
    }

    @ParameterizedTest
    @CsvSource({"10, 10", "1500, 40"})
    void theWholeDrawingIsInsideItsPage(double width, double height) {
        Page page = Pages.whole(Demo.plate(width, height));
        assertThat(page.window().contains(Extent.of(page.artwork()))).isTrue();
        assertThat(page.media().grown(-10 + 1e-9).contains(Extent.of(page.furniture())))
                .isTrue();
    }

    /** A title far longer than its cell, 135 mm wide with 1.5 mm of padding, is written smaller. */
    @ParameterizedTest
    @EnumSource(Paper.class)
    void aLongTitleStaysInItsCell(Paper paper) {
        String words = "A title that goes on and on ".repeat(8).strip();
        TitleBlock title = new TitleBlock("", words, "1", "", "", "", "", "");
        List<Mark> marks = Furniture.around(new Sheet(paper, false).window(), new Legend(title, "", ""));
        assertThat(marks.stream()
                        .filter(Text.class::isInstance)
                        .map(Text.class::cast)
                        .filter(text -> text.words().equals(words)))
                .singleElement()
                .satisfies(text -> assertThat(text.width()).isCloseTo(132, within(1e-6)));
    }

    private static List<Mark> stamp(Page page) {
        return page.artwork().stream()
                .filter(mark -> mark instanceof Text text && text.layer() == Layer.STAMP)
                .toList();
    }
}
