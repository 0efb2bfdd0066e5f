package org.brakewright.drawing.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.brakewright.drawing.Bounds;
import org.brakewright.drawing.Demo;
import org.brakewright.drawing.Drawing;
import org.brakewright.drawing.Polyline;
import org.brakewright.drawing.Stroke;
import org.brakewright.drawing.Vertex;
import org.brakewright.drawing.page.Page;
import org.brakewright.drawing.page.Pages;
import org.brakewright.drawing.page.Paper;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** SVG read back with the XML parser of the JDK. */
class SvgWriterTest {
    @Test
    void aUserUnitIsAMillimeter() throws Exception {
        Bounds media = Pages.whole(Demo.plate(130, 150)).media();
        Element root = parse(SvgWriter.write(Demo.plate(130, 150))).getDocumentElement();
        assertThat(root.getAttribute("width")).endsWith("mm");
        assertThat(root.getAttribute("height")).endsWith("mm");
        List<Double> box = numbers(root.getAttribute("viewBox"));
        assertThat(box.subList(0, 2)).containsExactly(0.0, 0.0);
        assertThat(box.get(2)).isCloseTo(media.width(), within(1e-4));
        assertThat(box.get(3)).isCloseTo(media.height(), within(1e-4));
        assertThat(numbers(root.getAttribute("width"))).containsExactly(box.get(2));
        assertThat(numbers(root.getAttribute("height"))).containsExactly(box.get(3));
    }

    /** A4 is 210 x 297 mm (ISO 216), letter 8.5 x 11 in (ANSI Y14.1, from memory). */
    @Test
    void aPageIsAsLargeAsItsPaper() throws Exception {
        Page letter = Pages.of(Demo.plate(130, 150), Paper.LETTER).getFirst();
        Page a4 = Pages.of(Demo.plate(130, 150), Paper.A4).getFirst();
        assertThat(SvgWriter.write(a4)).contains("width=\"210mm\" height=\"297mm\"");
        assertThat(SvgWriter.write(letter)).contains("width=\"215.9mm\" height=\"279.4mm\"");
    }

    /** The sizes the plate was drawn with: hole 12.5, outline 130 x 150, line 120. */
    @Test
    void sizesAreThoseOfTheDrawing() throws Exception {
        Document svg = parse(SvgWriter.write(Demo.plate(130, 150)));
        assertThat(group(svg, "HOLES").getElementsByTagName("circle").item(0))
                .satisfies(
                        hole -> assertThat(((Element) hole).getAttribute("r")).isEqualTo("12.5"));
        List<Double> outline = numbers(path(svg, "OUTLINE", 0));
        assertThat(outline.get(2) - outline.get(0)).isCloseTo(130, within(1e-3));
        assertThat(outline.get(3) - outline.get(5)).isCloseTo(150, within(1e-3));
        List<Double> line = numbers(path(svg, "BEND", 0));
        assertThat(line.get(2) - line.get(0)).isCloseTo(120, within(1e-3));
    }

    @Test
    void checkBarsAre100MmAnd4InBothWays() throws Exception {
        Document svg = parse(SvgWriter.write(Demo.plate(130, 150)));
        List<List<Double>> bars = IntStream.range(0, 4 + 2 * 12)
                .mapToObj(i -> numbers(path(svg, "sheet-CHECK", i)))
                .filter(ends -> Math.hypot(ends.get(2) - ends.get(0), ends.get(3) - ends.get(1)) > 50)
                .toList();
        assertThat(bars.stream().map(ends -> round(ends.get(2) - ends.get(0)) + " " + round(ends.get(1) - ends.get(3))))
                .containsExactly("100.0 0.0", "101.6 0.0", "0.0 100.0", "0.0 101.6");
    }

    @Test
    void wordsAreEscapedAndReadBack() throws Exception {
        Document svg = parse(SvgWriter.write(Demo.plate(130, 150).stamped("NO")));
        assertThat(words(group(svg, "TEXT"))).containsExactly("bend 90° up & <over>");
        assertThat(words(group(svg, "sheet-FRAME"))).contains("Doubler <left> & right");
        assertThat(words(group(svg, "STAMP"))).containsExactly("NO");
    }

    /** Half a circle of radius 10 that turns left from (0, 0) to (20, 0): its middle is below, at (10, -10). */
    @Test
    void roundEdgesTurnTheRightWay() throws Exception {
        var edges = List.of(Vertex.turning(0, 0, 180), Vertex.of(20, 0));
        Drawing drawing = Drawing.of(Demo.title(), List.of(new Polyline(edges, true, Stroke.OUTLINE)));
        String way = path(parse(SvgWriter.write(drawing)), "OUTLINE", 0);
        List<Double> numbers = numbers(way);
        assertThat(numbers).hasSize(2 + 2 * 7 + 2);
        assertThat(numbers.subList(2, 7)).containsExactly(10.0, 10.0, 0.0, 0.0, 0.0);
        assertThat(numbers.get(7) - numbers.get(0)).isCloseTo(10, within(1e-3));
        assertThat(numbers.get(8) - numbers.get(1)).isCloseTo(10, within(1e-3));
    }

    @Test
    void theSameDrawingGivesTheSameText() {
        assertThat(SvgWriter.write(Demo.plate(130, 150))).isEqualTo(SvgWriter.write(Demo.plate(130, 150)));
    }

    private static double round(double value) {
        return Math.abs(Math.rint(value * 1000) / 1000);
    }

    private static String path(Document svg, String group, int index) {
        Element path = (Element) group(svg, group).getElementsByTagName("path").item(index);
        return path.getAttribute("d");
    }

    private static Element group(Document svg, String id) {
        var groups = svg.getElementsByTagName("g");
        return IntStream.range(0, groups.getLength())
                .mapToObj(i -> (Element) groups.item(i))
                .filter(group -> group.getAttribute("id").equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> words(Element group) {
        var texts = group.getElementsByTagName("text");
        return IntStream.range(0, texts.getLength())
                .mapToObj(i -> texts.item(i).getTextContent())
                .toList();
    }

    private static List<Double> numbers(String text) {
        return Stream.of(text.split("[^\\d.-]+", -1))
                .filter(number -> !number.isEmpty())
                .map(Double::valueOf)
                .toList();
    }

    private static Document parse(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    }
}
