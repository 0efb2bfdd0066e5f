package org.brakewright.drawing.write;

import org.brakewright.drawing.Bounds;
import org.brakewright.drawing.Drawing;
import org.brakewright.drawing.Layer;
import org.brakewright.drawing.LineKind;
import org.brakewright.drawing.LineWidth;
import org.brakewright.drawing.page.Page;
import org.brakewright.drawing.page.Pages;

/**
 * Writes DXF R12 (AC1009) in ASCII: the oldest form, which every cutting table reads. R12 has no unit; a comment and the
 * check bars say millimeters. The drawing keeps its own coordinates; frame and bars stand on layers of their own.
 */
public final class DxfWriter {
    /** Dashes are drawn as those of this line width, R12 knowing none. */
    private static final double PATTERN_WIDTH = LineWidth.NARROW.mm();

    private DxfWriter() {}

    /** The whole drawing, with title block, check bars and stamp. */
    public static String write(Drawing drawing) {
        Page page = Pages.whole(drawing);
        DxfTags tags = new DxfTags();
        tags.add(999, "All lengths are in millimeters. Cut layers OUTLINE and HOLES only.");
        header(page.media(), tags);
        tables(tags);
        section("BLOCKS", tags);
        tags.add(0, "ENDSEC");
        section("ENTITIES", tags);
        page.artwork().forEach(mark -> DxfMarks.add(mark, tags));
        page.furniture().forEach(mark -> DxfMarks.add(mark, tags));
        return tags.add(0, "ENDSEC").add(0, "EOF").text();
    }

    private static void section(String name, DxfTags tags) {
        tags.add(0, "SECTION").add(2, name);
    }

    private static void header(Bounds extent, DxfTags tags) {
        section("HEADER", tags);
        tags.add(9, "$ACADVER").add(1, "AC1009");
        tags.add(9, "$INSBASE").at(10, 0, 0);
        tags.add(9, "$EXTMIN").at(10, extent.minX(), extent.minY());
        tags.add(9, "$EXTMAX").at(10, extent.maxX(), extent.maxY());
        tags.add(9, "$LIMMIN").add(10, extent.minX()).add(20, extent.minY());
        tags.add(9, "$LIMMAX").add(10, extent.maxX()).add(20, extent.maxY());
        tags.add(9, "$LTSCALE").add(40, 1.0);
        tags.add(9, "$LUNITS").add(70, 2);
        tags.add(9, "$LUPREC").add(70, 4);
        tags.add(0, "ENDSEC");
    }

    private static void tables(DxfTags tags) {
        section("TABLES", tags);
        table("LTYPE", LineKind.values().length, tags);
        for (LineKind kind : LineKind.values()) {
            lineType(kind, tags);
        }
        tags.add(0, "ENDTAB");
        table("LAYER", Layer.values().length + 1, tags);
        layer("0", 7, tags);
        for (Layer layer : Layer.values()) {
            layer(layer.name(), color(layer), tags);
        }
        tags.add(0, "ENDTAB");
        table("STYLE", 1, tags);
        tags.add(0, "STYLE").add(2, "STANDARD").add(70, 0).add(40, 0.0).add(41, 1.0);
        tags.add(50, 0.0).add(71, 0).add(42, 2.5).add(3, "txt").add(4, "");
        tags.add(0, "ENDTAB").add(0, "ENDSEC");
    }

    private static void table(String name, int entries, DxfTags tags) {
        tags.add(0, "TABLE").add(2, name).add(70, entries);
    }

    private static void lineType(LineKind kind, DxfTags tags) {
        var pattern = kind.pattern();
        double length =
                PATTERN_WIDTH * pattern.stream().mapToInt(Integer::intValue).sum();
        tags.add(0, "LTYPE").add(2, DxfMarks.lineType(kind)).add(70, 0).add(3, "");
        tags.add(72, 65).add(73, pattern.size()).add(40, length);
        for (int i = 0; i < pattern.size(); i++) {
            tags.add(49, (i % 2 == 0 ? 1 : -1) * PATTERN_WIDTH * pattern.get(i));
        }
    }

    private static void layer(String name, int color, DxfTags tags) {
        tags.add(0, "LAYER").add(2, name).add(70, 0).add(62, color).add(6, DxfMarks.lineType(LineKind.CONTINUOUS));
    }

    private static int color(Layer layer) {
        return switch (layer) {
            case OUTLINE -> 7;
            case HOLES, STAMP -> 1;
            case BEND -> 5;
            case CENTRE -> 3;
            case DIMENSION -> 2;
            case TEXT -> 4;
            case CHECK -> 6;
            case FRAME -> 8;
        };
    }
}
