package org.brakewright.drawing.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.brakewright.drawing.Align;
import org.brakewright.drawing.Arc;
import org.brakewright.drawing.Demo;
import org.brakewright.drawing.Drawing;
import org.brakewright.drawing.Layer;
import org.brakewright.drawing.Point;
import org.brakewright.drawing.Polyline;
import org.brakewright.drawing.Program;
import org.brakewright.drawing.Stroke;
import org.brakewright.drawing.Text;
import org.brakewright.drawing.Vertex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** DXF read back by ezdxf, whose audit has nothing to say and nothing to mend. */
class DxfWriterTest {
    @TempDir
    Path folder;

    @Test
    void theAuditFindsAndMendsNothing() throws Exception {
        assertThat(readBack(Demo.plate(130, 150).stamped("DO NOT CUT: it yields")))
                .contains("version AC1009", "errors 0", "fixes 0")
                .anyMatch(line -> line.startsWith("TEXT STAMP") && line.contains("DO NOT CUT"));
    }

    /** The sizes the plate was drawn with, in the drawing's own coordinates. */
    @Test
    void sizesAreThoseOfTheDrawing() throws Exception {
        assertThat(readBack(Demo.plate(130, 150)))
                .contains(
                        "POLYLINE OUTLINE closed 0.00000 0.00000 0.00000000 130.00000 0.00000 0.00000000"
                                + " 130.00000 150.00000 0.00000000 0.00000 150.00000 0.00000000",
                        "CIRCLE HOLES 65.00000 75.00000 12.50000",
                        "ARC CENTRE 65.00000 75.00000 20.00000 0.00000 90.00000",
                        "LINE BEND CONTINUOUS 5.00000 10.00000 125.00000 10.00000",
                        "TEXT TEXT 3.50000 0.00000 bend 90° up & <over>");
    }

    /** Both bars in both directions: 100 mm and 4 in = 101.6 mm. */
    @Test
    void checkBarsHaveTheirLengths() throws Exception {
        List<String> lengths = readBack(Demo.plate(130, 150)).stream()
                .filter(line -> line.startsWith("LINE CHECK"))
                .map(line -> line.split(" ", -1))
                .map(words -> Double.parseDouble(words[5]) - Double.parseDouble(words[3]) + " "
                        + (Double.parseDouble(words[6]) - Double.parseDouble(words[4])))
                .filter(length -> length.startsWith("10") || length.contains(" 10"))
                .toList();
        assertThat(lengths).hasSize(4);
        assertThat(lengths.getFirst()).startsWith("100.0").endsWith(" 0.0");
        assertThat(lengths.get(1)).startsWith("101.6").endsWith(" 0.0");
        assertThat(lengths.get(2)).startsWith("0.0 100.0");
        assertThat(lengths.get(3)).startsWith("0.0 101.6");
    }

    @Test
    void everyLayerHasItsName() throws Exception {
        assertThat(readBack(Demo.plate(130, 150)))
                .containsAll(
                        Stream.of(Layer.values()).map(layer -> "layer " + layer).toList())
                .contains("linetype DASHED", "linetype CENTER", "linetype PHANTOM");
    }

    /** A bulge is the tangent of a quarter of the turn: 90 degrees to the right is -tan(22.5) = 1 - sqrt(2). */
    @Test
    void roundEdgesKeepTheirBulge() throws Exception {
        var edges = List.of(Vertex.turning(0, 0, -90), Vertex.of(10, 10), Vertex.of(10, 0));
        Drawing drawing = Drawing.of(Demo.title(), List.of(new Polyline(edges, true, Stroke.OUTLINE)));
        assertThat(readBack(drawing))
                .anyMatch(line ->
                        line.startsWith("POLYLINE OUTLINE closed 0.00000 0.00000 -0.41421356 10.00000 10.00000"));
    }

    @Test
    void aFullTurnIsACircleAndAnglesStayBelow360() throws Exception {
        var shapes = List.of(
                new Arc(new Point(0, 0), 5, 0, 360, Stroke.HOLE), new Arc(new Point(0, 0), 7, -30, 30, Stroke.HOLE));
        assertThat(readBack(Drawing.of(Demo.title(), shapes)))
                .contains(
                        "CIRCLE HOLES 0.00000 0.00000 5.00000", "ARC HOLES 0.00000 0.00000 7.00000 330.00000 30.00000");
    }

    @Test
    void turnedWordsKeepHeightAndAngle() throws Exception {
        Text words = Text.of(new Point(3, 4), 5, "up").turned(-90).aligned(Align.CENTER);
        assertThat(readBack(Drawing.of(Demo.title(), List.of(words)))).contains("TEXT TEXT 5.00000 270.00000 up");
    }

    /** %%d, %%c and %%p are the codes of the format for degree, diameter and plus-minus (DXF reference, from memory). */
    @ParameterizedTest
    @CsvSource({"90°, 90%%d", "⌀8 ±0.1, %%c8 %%p0.1", "5%%d, 5% %d", "100%°, 100% %%d", "µ, \\U+00B5", "a^b, a^ b"})
    void wordsAreWrittenInAscii(String words, String written) {
        assertThat(DxfWords.of(words)).isEqualTo(written);
    }

    @Test
    void theFileIsAsciiAndTheSameEachTime() {
        String dxf = DxfWriter.write(Demo.plate(130, 150).stamped("NON \u00C0 COUPER"));
        assertThat(StandardCharsets.US_ASCII.newEncoder().canEncode(dxf)).isTrue();
        assertThat(DxfWriter.write(Demo.plate(130, 150).stamped("NON \u00C0 COUPER")))
                .isEqualTo(dxf);
    }

    private List<String> readBack(Drawing drawing) throws Exception {
        Path dxf = Files.writeString(folder.resolve("drawing.dxf"), DxfWriter.write(drawing));
        Path script = Path.of(
                Objects.requireNonNull(getClass().getResource("read_back.py")).toURI());
        String printed = Program.run("python3-ezdxf", List.of("/usr/bin/python3", script.toString(), dxf.toString()));
        return printed.lines().toList();
    }
}
