package org.brakewright.app.page;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.brakewright.analysis.Analysis;
import org.brakewright.analysis.clutch.ClutchState;
import org.brakewright.analysis.clutch.ClutchState.Loss;
import org.brakewright.analysis.clutch.LossCause;
import org.brakewright.analysis.clutch.PlateState;
import org.brakewright.analysis.clutch.PlateState.CurvePoint;
import org.brakewright.app.words.Show;
import org.brakewright.findings.Assessment;
import org.brakewright.quantity.Dimension;
import org.brakewright.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** The clutch: its curve, new and worn, and where its pedal travel goes. */
public final class ClutchPanel {
    private final Show show;

    /** The panel in a system of units. */
    public ClutchPanel(Show show) {
        this.show = show;
    }

    /** The panel; null when no clutch is given. */
    PageView.@Nullable Clutch of(Analysis analysis) {
        ClutchState clutch = analysis.clutch();
        return clutch == null
                ? null
                : new PageView.Clutch(effort(clutch), travel(clutch), table(clutch), losses(clutch));
    }

    /** Effort, release and torque in one sentence; empty when no clutch is given. */
    public String sentence(Assessment assessment) {
        ClutchState clutch = assessment.analysis().clutch();
        return clutch == null
                ? ""
                : "The clutch pedal takes up to " + show.value(clutch.heaviest().mostEffortN(), Dimension.FORCE) + ": "
                        + told(assessment) + ".";
    }

    /** Aim, release and torque beside the effort. */
    String told(Assessment assessment) {
        ClutchState clutch = requireNonNull(assessment.analysis().clutch());
        double aim = assessment.resolved().clutch().orElseThrow().limits().mostEffort();
        double spare = clutch.leastFree().spareM();
        String frees = spare < 0
                ? "does not free, " + show.value(-spare, Dimension.LENGTH) + " of bearing travel short"
                : "frees with " + show.value(spare, Dimension.LENGTH) + " of bearing travel to spare";
        Double reserve = clutch.torque().reserve();
        String torque = reserve == null
                ? "carries " + show.value(clutch.torque().uniformWearNM(), Dimension.TORQUE)
                : "carries " + show.number(reserve) + " times the engine's torque";
        return "aim " + show.value(aim, Dimension.FORCE) + ", " + frees + ", " + torque;
    }

    /** Both plates in a table; null when no clutch is given. */
    public PageView.@Nullable Table table(Analysis analysis) {
        ClutchState clutch = analysis.clutch();
        return clutch == null ? null : table(clutch);
    }

    /** Where the travel goes, in a table; null when no clutch is given. */
    public PageView.@Nullable Table lossTable(Analysis analysis) {
        ClutchState clutch = analysis.clutch();
        return clutch == null
                ? null
                : new PageView.Table(
                        "Where the clutch pedal's travel goes until a new plate is free",
                        List.of("what", "at the pad"),
                        losses(clutch).stream()
                                .map(row -> List.of(row.label(), row.text()))
                                .toList());
    }

    private PageView.Chart effort(ClutchState clutch) {
        Unit unit = show.system().unit(Dimension.FORCE);
        return chart(
                clutch,
                "Clutch pedal effort",
                "Effort of the clutch pedal over its travel with new and worn plate; upright lines mark where a new plate is free and where the pedal's stop belongs.",
                "effort, " + unit.symbol(),
                point -> unit.fromSi(point.effortN()));
    }

    private PageView.Chart travel(ClutchState clutch) {
        Unit unit = show.system().unit(Dimension.LENGTH);
        return chart(
                clutch,
                "Clutch bearing travel",
                "Travel of the release bearing on the fingers over the travel of the clutch pedal with new and worn plate; upright lines mark where a new plate is free and where the pedal's stop belongs.",
                "bearing travel, " + unit.symbol(),
                point -> unit.fromSi(point.bearingTravelM()));
    }

    private PageView.Chart chart(
            ClutchState clutch, String title, String description, String yLabel, ToDoubleFunction<CurvePoint> y) {
        Unit length = show.system().unit(Dimension.LENGTH);
        double top = clutch.newPlate().curve().stream().mapToDouble(y).max().orElse(0);
        List<PageView.Series> series = new ArrayList<>();
        series.add(curve("new plate", "case_1", clutch.newPlate(), y));
        series.add(curve("worn plate", "case_2", clutch.wornPlate(), y));
        series.add(upright("free", "ideal", length.fromSi(clutch.newPlate().freePadM()), top));
        Double stop = clutch.stop().bestM();
        if (stop != null) {
            series.add(upright("pedal stop", "limit", length.fromSi(stop), top));
        }
        return new PageView.Chart(
                title, description, "clutch pedal travel, " + length.symbol(), yLabel, List.copyOf(series));
    }

    private PageView.Series curve(String label, String style, PlateState plate, ToDoubleFunction<CurvePoint> y) {
        Unit length = show.system().unit(Dimension.LENGTH);
        return new PageView.Series(
                label,
                style,
                plate.curve().stream()
                        .map(point -> length.fromSi(point.padTravelM()))
                        .toList(),
                plate.curve().stream()
                        .map(point -> (@Nullable Double) y.applyAsDouble(point))
                        .toList());
    }

    private static PageView.Series upright(String label, String style, double at, double top) {
        return new PageView.Series(label, style, List.of(at, at), List.of(0.0, top));
    }

    private PageView.Table table(ClutchState clutch) {
        PlateState fresh = clutch.newPlate();
        PlateState worn = clutch.wornPlate();
        List<List<String>> rows = new ArrayList<>();
        rows.add(row("clamp load", Dimension.FORCE, fresh.clampForceN(), worn.clampForceN()));
        rows.add(row("gap at the bearing", Dimension.LENGTH, fresh.gapM(), worn.gapM()));
        rows.add(row("no clamp force left at pad", Dimension.LENGTH, fresh.liftOffPadM(), worn.liftOffPadM()));
        rows.add(row("free at pad", Dimension.LENGTH, fresh.freePadM(), worn.freePadM()));
        rows.add(row("bearing travel needed", Dimension.LENGTH, fresh.neededM(), worn.neededM()));
        rows.add(row("bearing travel at the end", Dimension.LENGTH, fresh.bearingTravelM(), worn.bearingTravelM()));
        rows.add(row("slave stroke left", Dimension.LENGTH, fresh.extensionLeftM(), worn.extensionLeftM()));
        rows.add(row("most effort", Dimension.FORCE, fresh.mostEffortN(), worn.mostEffortN()));
        rows.add(row("effort where free", Dimension.FORCE, fresh.effortAtFreeN(), worn.effortAtFreeN()));
        return new PageView.Table(caption(clutch), List.of("clutch", "new plate", "worn plate"), List.copyOf(rows));
    }

    private String caption(ClutchState clutch) {
        Double stop = clutch.stop().bestM();
        return "Clutch: pedal ends at " + length(clutch.pedalEndM())
                + (stop == null ? ", no place for a stop, carries " : ", stop best at " + length(stop) + ", carries ")
                + show.value(clutch.torque().uniformWearNM(), Dimension.TORQUE) + " bedded";
    }

    private List<String> row(String what, Dimension dimension, double fresh, double worn) {
        return List.of(what, show.value(fresh, dimension), show.value(worn, dimension));
    }

    private String length(double metres) {
        return show.value(metres, Dimension.LENGTH);
    }

    private List<PageView.BudgetRow> losses(ClutchState clutch) {
        double whole = clutch.newPlate().freePadM();
        return clutch.losses().stream()
                .filter(loss -> loss.padTravelM() > 0)
                .map(loss -> row(loss, whole))
                .toList();
    }

    private PageView.BudgetRow row(Loss loss, double whole) {
        return new PageView.BudgetRow(
                words(loss.cause()), "pedal", length(loss.padTravelM()), loss.padTravelM() / whole);
    }

    private static String words(LossCause cause) {
        return switch (cause) {
            case FREE_PLAY -> "free play";
            case SLACK -> "slack in rod and clevis";
            case LOST_STROKE -> "master's lost stroke";
            case GAP -> "gap at the bearing";
            case HOSES -> "hoses swell";
            case TUBES -> "tubes swell";
            case LIQUID -> "fluid is squeezed";
            case AIR -> "air is squeezed";
            case FORK -> "fork gives";
            case MOUNT -> "pedal mount gives";
            case ARM -> "pedal arm bends";
            case FINGERS -> "arrives at the fingers";
        };
    }
}
