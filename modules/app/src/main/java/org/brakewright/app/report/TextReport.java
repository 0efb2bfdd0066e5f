package org.brakewright.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.BiFunction;
import org.brakewright.analysis.LoadCaseResult;
import org.brakewright.app.page.BalanceTables;
import org.brakewright.app.page.BarMaker;
import org.brakewright.app.page.BarView;
import org.brakewright.app.page.ClutchPanel;
import org.brakewright.app.page.DrumTable;
import org.brakewright.app.page.FailureTable;
import org.brakewright.app.page.FeelView;
import org.brakewright.app.page.FootwellPanel;
import org.brakewright.app.page.HeatViews;
import org.brakewright.app.page.LedgerRows;
import org.brakewright.app.page.LineTables;
import org.brakewright.app.page.MountPanel;
import org.brakewright.app.page.PageView;
import org.brakewright.app.page.ParkingTable;
import org.brakewright.app.page.PedalMaker;
import org.brakewright.app.page.StopViews;
import org.brakewright.app.page.Tables;
import org.brakewright.app.words.CureWords;
import org.brakewright.app.words.FindingWords;
import org.brakewright.app.words.Show;
import org.brakewright.app.words.Verdict;
import org.brakewright.findings.Assessment;
import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.findings.cure.Cure;
import org.jspecify.annotations.Nullable;

/** The assessment as text: verdict, findings, tables, what to measure next. */
public final class TextReport {
    private static final int WIDTH = 96;
    private static final int LEDGER_ROWS = 8;

    private final Show show;
    private final FindingWords words;
    private final CureWords cures;
    private final BiFunction<State, String, String> colours;

    /** Reports in a system of units; colours wrap the words of states. */
    public TextReport(Show show, BiFunction<State, String, String> colours) {
        this.show = show;
        this.words = new FindingWords(show);
        this.cures = new CureWords(show);
        this.colours = colours;
    }

    /** The whole report. */
    public String write(Assessment assessment) {
        StringBuilder text = new StringBuilder();
        Verdict verdict = Verdict.of(assessment, words);
        text.append(assessment.build().name()).append("\n\n");
        text.append(colours.apply(
                        verdict.state(), FindingWords.word(verdict.state()).toUpperCase(Locale.ROOT)))
                .append('\n')
                .append(Wrap.lines(verdict.sentence(), WIDTH, ""))
                .append("\n\n");
        assessment.findings().forEach(finding -> text.append(finding(finding)));
        text.append('\n')
                .append(Wrap.lines(
                        new PedalMaker(show).sentence(assessment.analysis().pedal()), WIDTH, ""))
                .append('\n');
        String clutch = new ClutchPanel(show).sentence(assessment);
        if (!clutch.isEmpty()) {
            text.append(Wrap.lines(clutch, WIDTH, "")).append('\n');
        }
        List.of(
                        new MountPanel(show).sentence(assessment.analysis()),
                        new FootwellPanel(show).sentence(assessment.analysis()))
                .stream()
                .filter(sentence -> !sentence.isEmpty())
                .forEach(
                        sentence -> text.append(Wrap.lines(sentence, WIDTH, "")).append('\n'));
        tables(assessment).forEach(table -> text.append('\n').append(Columns.write(table)));
        text.append('\n').append(feel(assessment));
        text.append('\n').append(ledger(assessment));
        return text.toString();
    }

    private String finding(Finding finding) {
        StringBuilder text = new StringBuilder();
        text.append(colours.apply(finding.state(), FindingWords.word(finding.state())))
                .append(": ")
                .append(words.title(finding))
                .append('\n')
                .append(Wrap.lines(words.sentence(finding), WIDTH, "  "))
                .append('\n');
        if (finding.limit() != null) {
            String whose =
                    finding.limit().whose() + " (" + finding.limit().tag().words() + ")";
            text.append(Wrap.lines("Limit: " + words.limit(finding) + ", " + whose + ".", WIDTH, "  "))
                    .append('\n');
        }
        Cure cure = finding.cure();
        if (cure != null) {
            text.append(Wrap.lines("Cure: " + cures.sentence(cure), WIDTH, "  "))
                    .append('\n');
        } else if (finding.state() != State.FINE) {
            text.append(Wrap.lines("Next: " + words.advice(finding), WIDTH, "  "))
                    .append('\n');
        }
        return text.toString();
    }

    private List<PageView.Table> tables(Assessment assessment) {
        Tables tables = new Tables(show, assessment);
        List<PageView.Table> all = new ArrayList<>();
        for (LoadCaseResult loadCase : assessment.analysis().loadCases()) {
            all.add(tables.points(loadCase));
            all.add(tables.locks(loadCase));
        }
        add(all, new PedalMaker(show).table(assessment.analysis().pedal()));
        BarView bar = new BarMaker(show).of(assessment);
        add(all, bar == null ? null : bar.table());
        all.add(new FailureTable(show, assessment).brief());
        all.add(tables.stops());
        add(all, new DrumTable(show).of(assessment.analysis()));
        add(all, new ParkingTable(show).of(assessment.analysis()));
        all.addAll(new BalanceTables(show, assessment).all());
        add(all, new ClutchPanel(show).table(assessment.analysis()));
        add(all, new ClutchPanel(show).lossTable(assessment.analysis()));
        all.addAll(new MountPanel(show).tables(assessment.analysis()));
        all.addAll(new FootwellPanel(show).tables(assessment.analysis()));
        all.addAll(new LineTables(show).of(assessment.analysis()));
        add(all, new HeatViews(show).table(assessment));
        add(all, new StopViews(show).table(assessment.analysis().stops()));
        return all;
    }

    private static void add(List<PageView.Table> all, PageView.@Nullable Table table) {
        if (table != null) {
            all.add(table);
        }
    }

    private String feel(Assessment assessment) {
        StringBuilder text = new StringBuilder("How firm the pedal may be\n");
        for (String sentence : new FeelView(show).sentences(assessment)) {
            text.append(Wrap.lines(sentence, WIDTH, "  ")).append('\n');
        }
        return text.toString();
    }

    private String ledger(Assessment assessment) {
        List<PageView.LedgerRow> rows = new LedgerRows(show).of(assessment);
        if (rows.isEmpty()) {
            return "Nothing was assumed.\n";
        }
        StringBuilder text = new StringBuilder("What to measure next (" + rows.size() + " values were assumed)\n");
        for (PageView.LedgerRow row : rows.subList(0, Math.min(LEDGER_ROWS, rows.size()))) {
            String moves = row.moves().isEmpty() ? "moves nothing much" : String.join(", ", row.moves());
            text.append(Wrap.lines(
                            row.rank() + ". " + row.title() + ": " + row.value() + " assumed (" + row.range() + "); "
                                    + moves + ".",
                            WIDTH,
                            "  "))
                    .append('\n');
        }
        return text.toString();
    }
}
