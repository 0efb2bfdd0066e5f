package org.brakewright.drawing.write;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.brakewright.drawing.Bounds;
import org.brakewright.drawing.Drawing;
import org.brakewright.drawing.lettering.Lettering;
import org.brakewright.drawing.page.Page;
import org.brakewright.drawing.page.Pages;
import org.brakewright.drawing.page.Paper;

/** Writes PDF at true scale, with the font embedded, and asks the viewer not to scale when it prints. */
public final class PdfWriter {
    /** The file's identifier is made from this and the title instead of from the clock. */
    private static final long DOCUMENT_ID = 1;

    private PdfWriter() {}

    /** One drawing, on as many sheets as it takes. */
    public static byte[] write(Drawing drawing, Paper paper) {
        return write(List.of(drawing), paper);
    }

    /** Several drawings one after the other, their pages counted through; the first names the file. IllegalArgumentException when there is none. */
    public static byte[] write(List<Drawing> drawings, Paper paper) {
        if (drawings.isEmpty()) {
            throw new IllegalArgumentException("drawings must not be empty");
        }
        return write(drawings.getFirst().title().title(), Pages.of(drawings, paper));
    }

    /** Pages as they are, under a title. */
    public static byte[] write(String title, List<Page> pages) {
        try (PDDocument document = new PDDocument();
                TrueTypeFont font = font()) {
            describe(document, Lettering.printable(title));
            PDFont lettering = PDType0Font.load(document, font, true);
            for (Page page : pages) {
                add(page, document, lettering);
            }
            var bytes = new ByteArrayOutputStream();
            document.save(bytes);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException("cannot write a PDF into memory", e);
        }
    }

    /** Without ligatures, which a search for the words would not find. */
    private static TrueTypeFont font() throws IOException {
        try (InputStream stream = Lettering.open()) {
            TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(stream));
            font.setEnableGsub(false);
            return font;
        }
    }

    private static void describe(PDDocument document, String title) {
        document.setDocumentId(DOCUMENT_ID);
        document.getDocumentInformation().setTitle(title);
        document.getDocumentInformation().setCreator("Brakewright");
        PDDocumentCatalog catalog = document.getDocumentCatalog();
        catalog.setLanguage("en-US");
        PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
        preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
        preferences.setDisplayDocTitle(true);
        catalog.setViewerPreferences(preferences);
    }

    private static void add(Page page, PDDocument document, PDFont font) throws IOException {
        Bounds media = page.media();
        PdfMarks.Scale scale = new PdfMarks.Scale(media.corner());
        PDPage sheet = new PDPage(
                new PDRectangle(PdfMarks.Scale.points(media.width()), PdfMarks.Scale.points(media.height())));
        document.addPage(sheet);
        try (PDPageContentStream stream = new PDPageContentStream(document, sheet)) {
            PdfMarks marks = new PdfMarks(stream, font, scale);
            stream.saveGraphicsState();
            marks.clip(page.window());
            marks.draw(page.artwork());
            stream.restoreGraphicsState();
            marks.draw(page.furniture());
        }
    }
}
