package org.brakewright.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.brakewright.analysis.tolerance.Tolerance;
import org.brakewright.app.page.PageView;
import org.brakewright.app.page.SpreadMaker;
import org.brakewright.app.page.SpreadView;
import org.brakewright.app.words.Show;
import org.brakewright.app.words.UnitSystem;

/** A tolerance run as text: sentences first, then numbers; or as JSON. */
public final class ToleranceReport {
    private static final int FORMAT = 1;
    private static final int WIDTH = 96;

    private ToleranceReport() {}

    /** The run of a car as text. */
    public static String text(String name, Tolerance tolerance, Show show) {
        SpreadView view = new SpreadMaker(show).make(tolerance, 0);
        StringBuilder text = new StringBuilder(name).append("\n\n");
        if (tolerance.inputs().isEmpty()) {
            paragraph(text, view.sentence());
        }
        view.bands().forEach(band -> paragraph(text, band.sentence()));
        view.notes().forEach(note -> paragraph(text, note));
        text.append(Columns.write(bands(view))).append('\n');
        text.append(Columns.write(view.rearFirst())).append('\n');
        view.bands().forEach(band -> owners(text, band));
        paragraph(text, view.basis());
        return text.toString().stripTrailing() + "\n";
    }

    /** The run of a car as JSON, numbers in SI. */
    public static String json(String name, Tolerance tolerance) {
        String sentence =
                new SpreadMaker(new Show(UnitSystem.METRIC)).make(tolerance, 0).sentence();
        return Json.indented(new ToleranceResult(FORMAT, name, sentence, tolerance));
    }

    private static void paragraph(StringBuilder text, String sentence) {
        text.append(Wrap.lines(sentence, WIDTH, "")).append("\n\n");
    }

    private static PageView.Table bands(SpreadView view) {
        List<List<String>> rows = new ArrayList<>();
        for (SpreadView.BandView band : view.bands()) {
            SpreadView.Marks marks = band.marks();
            if (marks != null) {
                rows.add(row(band.label(), marks.texts()));
            }
        }
        return new PageView.Table(
                "How many cars in 100 lie below",
                List.of("", "5", "25", "50", "75", "95", "as it stands", "limit"),
                List.copyOf(rows));
    }

    private static List<String> row(String label, SpreadView.MarkTexts texts) {
        return List.of(
                label,
                texts.p05(),
                texts.p25(),
                texts.p50(),
                texts.p75(),
                texts.p95(),
                texts.nominal() == null ? "-" : texts.nominal(),
                texts.limit() == null ? "-" : texts.limit());
    }

    private static void owners(StringBuilder text, SpreadView.BandView band) {
        if (band.owners().isEmpty()) {
            return;
        }
        text.append("What owns the spread: ")
                .append(band.label().toLowerCase(Locale.ROOT))
                .append('\n');
        band.owners()
                .forEach(owner -> text.append(String.format(Locale.ROOT, "  %5s  %s%n", owner.text(), owner.title())));
        text.append(String.format(Locale.ROOT, "  %5s  all others, and several together%n%n", band.together()));
    }
}
