package org.brakewright.sheets;

import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.brakewright.drawing.page.Paper;
import org.brakewright.drawing.write.DxfWriter;
import org.brakewright.drawing.write.PdfWriter;
import org.brakewright.drawing.write.SvgWriter;

/** Sheets as files: name to contents, in the order of the sheets. */
public final class SheetFiles {
    private SheetFiles() {}

    /** PDF on each paper, SVG and DXF of every sheet. */
    public static Map<String, byte[]> of(List<Sheet> sheets, List<Paper> papers) {
        var files = new LinkedHashMap<String, byte[]>();
        for (Sheet sheet : sheets) {
            for (Paper paper : papers) {
                files.put(pdf(sheet.key(), paper), PdfWriter.write(sheet.drawings(), paper));
            }
            files.put(sheet.key() + ".svg", bytes(SvgWriter.write(sheet.drawing())));
            files.put(sheet.key() + ".dxf", bytes(DxfWriter.write(sheet.drawing())));
        }
        return Collections.unmodifiableMap(files);
    }

    /** Name of a sheet's PDF file on a paper. */
    public static String pdf(String key, Paper paper) {
        return key + "-" + paper.name().toLowerCase(Locale.ROOT) + ".pdf";
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
