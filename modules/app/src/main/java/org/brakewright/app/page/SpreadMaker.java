package org.brakewright.app.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.brakewright.analysis.tolerance.RearFirstOdds;
import org.brakewright.analysis.tolerance.RearFirstOdds.AtGrip;
import org.brakewright.analysis.tolerance.Spread;
import org.brakewright.analysis.tolerance.Spread.Measure;
import org.brakewright.analysis.tolerance.Tolerance;
import org.brakewright.app.words.FindingWords;
import org.brakewright.app.words.Show;
import org.brakewright.app.words.SpreadWords;
import org.jspecify.annotations.Nullable;

/** Puts a tolerance run into words, marks and a table. */
public final class SpreadMaker {
    private final Show show;
    private final SpreadWords words;

    /** Makes views in a system of units. */
    public SpreadMaker(Show show) {
        this.show = show;
        this.words = new SpreadWords(show);
    }

    /** The view of a run at a revision of the build file. */
    public SpreadView make(Tolerance tolerance, int revision) {
        return new SpreadView(
                revision,
                sentence(tolerance),
                SpreadWords.basis(tolerance),
                notes(tolerance),
                tolerance.spreads().stream().map(this::band).toList(),
                rearFirst(tolerance));
    }

    private String sentence(Tolerance tolerance) {
        return tolerance.inputs().isEmpty()
                ? "No value has a ± and nothing is assumed, so every car built like this is taken to be the same."
                : words.sentence(tolerance.spread(Measure.EFFORT));
    }

    private List<String> notes(Tolerance tolerance) {
        List<String> notes = new ArrayList<>();
        if (tolerance.outOfTravel() > 0) {
            notes.add("Pedal or masters run out of travel before the hard stop is reached "
                    + words.chance(tolerance.outOfTravel()) + ".");
        }
        if (tolerance.unusable() > 0) {
            notes.add(tolerance.unusable() + " of the " + tolerance.samples()
                    + " cars drawn contradict themselves; they are in none of these numbers.");
        }
        if (!tolerance.heldStill().isEmpty()) {
            notes.add("Assumed without a range, and so held still: " + String.join("; ", tolerance.heldStill()) + ".");
        }
        return List.copyOf(notes);
    }

    private SpreadView.BandView band(Spread spread) {
        return new SpreadView.BandView(
                key(spread.measure()),
                SpreadWords.label(spread),
                FindingWords.key(SpreadWords.state(spread)),
                SpreadWords.word(spread),
                words.sentence(spread),
                marks(spread),
                spread.owners().stream()
                        .map(owner -> new SpreadView.OwnerView(
                                owner.path(), owner.title(), owner.share(), show.percent(owner.share())))
                        .toList(),
                spread.owners().isEmpty() ? null : show.percent(spread.together()));
    }

    private static String key(Measure measure) {
        return measure == Measure.CRITICAL_DECELERATION
                ? "critical"
                : measure.name().toLowerCase(Locale.ROOT);
    }

    private SpreadView.@Nullable Marks marks(Spread spread) {
        Spread.Quantiles band = spread.band();
        return band == null
                ? null
                : new SpreadView.Marks(
                        band.p05(),
                        band.p25(),
                        band.p50(),
                        band.p75(),
                        band.p95(),
                        spread.nominal(),
                        spread.limit(),
                        texts(spread, band));
    }

    private SpreadView.MarkTexts texts(Spread spread, Spread.Quantiles band) {
        return new SpreadView.MarkTexts(
                words.value(spread.measure(), band.p05()),
                words.value(spread.measure(), band.p25()),
                words.value(spread.measure(), band.p50()),
                words.value(spread.measure(), band.p75()),
                words.value(spread.measure(), band.p95()),
                orNothing(spread, spread.nominal()),
                orNothing(spread, spread.limit()));
    }

    private @Nullable String orNothing(Spread spread, @Nullable Double value) {
        return value == null ? null : words.value(spread.measure(), value);
    }

    private PageView.Table rearFirst(Tolerance tolerance) {
        List<String> columns = new ArrayList<>(List.of("grip"));
        tolerance.rearFirst().forEach(odds -> columns.add(odds.loadCase()));
        List<List<String>> rows = new ArrayList<>();
        for (int row = 0; row < tolerance.rearFirst().getFirst().atGrip().size(); row++) {
            rows.add(row(tolerance.rearFirst(), row));
        }
        return new PageView.Table("How often the rear locks first", List.copyOf(columns), List.copyOf(rows));
    }

    private List<String> row(List<RearFirstOdds> cases, int row) {
        List<String> cells = new ArrayList<>();
        Double grip = cases.getFirst().atGrip().get(row).grip();
        cells.add(grip == null ? "the car's own" : show.fixed(grip, 1));
        cases.forEach(odds -> cells.add(cell(odds.atGrip().get(row))));
        return List.copyOf(cells);
    }

    private String cell(AtGrip odds) {
        if (odds.nothingLocks() == 1) {
            return "nothing locks";
        }
        return words.odds(odds.rearFirst(), odds.standardError());
    }
}
