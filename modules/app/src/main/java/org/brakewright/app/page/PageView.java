package org.brakewright.app.page;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What the page is sent; the counterpart of {@code ui/src/contract.ts}, where every part is explained. */
public record PageView(
        int revision,
        String file,
        boolean demo,
        String units,
        String name,
        @Nullable String story,
        boolean canUndo,
        boolean canRedo,
        Verdict verdict,
        List<Card> headline,
        List<Finding> findings,
        Chain chain,
        List<LoadCase> loadCases,
        Chart effortChart,
        Chart travelChart,
        FeelChart feelChart,
        List<BudgetRow> travelBudget,
        Table failures,
        Table stops,
        List<Table> balanceTables,
        List<LedgerRow> ledger,
        List<Section> inputs,
        List<Working> workings,
        List<String> cautions,
        @Nullable Table drums,
        @Nullable Table parking,
        @Nullable BarView bar,
        PedalView pedal,
        @Nullable Clutch clutch,
        @Nullable OverTime heat,
        List<Table> lines,
        @Nullable Tabled mount,
        @Nullable Tabled footwell) {

    /** The verdict. */
    public record Verdict(String state, String word, String sentence, Counts counts) {}

    /** What to know, and tables. */
    public record Tabled(String note, List<Table> tables) {}

    /** How many findings stand how. */
    public record Counts(long stop, long caution, long cannotTell, long fine) {}

    /** A headline number. */
    public record Card(
            String key,
            String label,
            String value,
            String note,
            String state,
            @Nullable String working) {}

    /** A finding. */
    public record Finding(
            String key,
            String state,
            String word,
            String title,
            String sentence,
            @Nullable String number,
            @Nullable String limit,
            @Nullable String whose,
            @Nullable String tag,
            @Nullable Cure cure,
            @Nullable String advice,
            List<String> inputs) {}

    /** A cure. */
    public record Cure(String sentence, List<Edit> edits) {}

    /** A value to write. */
    public record Edit(String path, String text) {}

    /** Layout of the chain's picture. */
    public record Chain(
            String apply,
            boolean booster,
            boolean valve,
            String front,
            String rear,
            @Nullable Double barOffset,
            Map<String, @Nullable String> inputs) {}

    /** A load case. */
    public record LoadCase(
            String name,
            String summary,
            String lockSentence,
            List<Point> points,
            ForceChart forceChart,
            Chart adhesionChart,
            Table lockTable,
            Table table) {}

    /** The chain at one deceleration. */
    public record Point(
            double decelerationG,
            String label,
            boolean withinTravel,
            double barTiltDeg,
            Map<String, List<String>> texts) {}

    /** A chart of curves. */
    public record Chart(String title, String description, String xLabel, String yLabel, List<Series> series) {}

    /** Counterpart of {@code FeelChart}. */
    public record FeelChart(Chart chart, List<FeelMark> marks, Table table) {}

    /** Counterpart of {@code FeelMark}. */
    public record FeelMark(String kind, String label, double x, double y) {}

    /** Counterpart of {@code Series}. */
    public record Series(String label, String style, List<Double> x, List<@Nullable Double> y) {}

    /** Rear against front brake force. */
    public record ForceChart(
            String title,
            String description,
            String xLabel,
            String yLabel,
            double xMax,
            double yMax,
            List<XY> ideal,
            List<XY> installed,
            List<GripLine> gripLines,
            List<DecelerationLine> decelerationLines) {}

    /** A point of the force diagram. */
    public record XY(double front, double rear) {}

    /** One axle at its grip. */
    public record GripLine(String label, String axle, XY from, XY to) {}

    /** A line of constant deceleration. */
    public record DecelerationLine(String label, double g) {}

    /** A share of the travel. */
    public record BudgetRow(String label, String where, String text, double share) {}

    /** The clutch. */
    public record Clutch(Chart effortChart, Chart travelChart, Table table, List<BudgetRow> losses) {}

    /** Something followed over time. */
    public record OverTime(String note, Table table, List<Chart> charts) {}

    /** A table. */
    public record Table(String caption, List<String> columns, List<List<String>> rows) {}

    /** An assumption. */
    public record LedgerRow(
            String path,
            String title,
            String value,
            String range,
            String basis,
            String tag,
            boolean byBuilder,
            int rank,
            List<String> moves,
            String how) {}

    /** Inputs that belong together. */
    public record Section(String title, List<FieldView> fields) {}

    /** One input. */
    public record FieldView(
            String path,
            String label,
            String kind,
            String written,
            String origin,
            String assumed,
            String also,
            String how,
            String allowed,
            boolean required,
            List<String> choices,
            List<String> units) {}

    /** A result opened. */
    public record Working(String key, String title, String result, List<WorkingStep> steps) {}

    /** One step of a working. */
    public record WorkingStep(String name, String formula, String withNumbers, String result, String source) {}
}
