package org.brakewright.app.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.brakewright.analysis.balance.BarOutline;
import org.brakewright.analysis.balance.BarPose;
import org.brakewright.analysis.balance.BarState;
import org.brakewright.analysis.balance.FailedPose;
import org.brakewright.analysis.vehicle.HardStop;
import org.brakewright.app.words.Show;
import org.brakewright.findings.Assessment;
import org.brakewright.kernel.dynamics.Gravity;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedApply.Bar;
import org.brakewright.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/** How the balance bar stands at rest, at the hard stop and with each circuit failed: drawn, told and in a table. */
public final class BarMaker {
    private static final double SQUARE = 0.5e-3;

    private final Show show;

    /** In a system of units. */
    public BarMaker(Show show) {
        this.show = show;
    }

    /** The bar of a car; null without one. */
    public @Nullable BarView of(Assessment assessment) {
        BarState bar = assessment.analysis().bar();
        return bar != null && assessment.resolved().apply() instanceof ResolvedApply.Twin twin
                ? new BarView(stances(assessment, bar, twin.bar()), range(bar), table(bar))
                : null;
    }

    private List<BarView.Stance> stances(Assessment assessment, BarState state, Bar bar) {
        List<BarView.Stance> stances = new ArrayList<>();
        stances.add(new BarView.Stance(
                "rest",
                "At rest",
                "Both pistons home: " + tilted(state.atRest()) + ".",
                BarOutline.of(bar, state.atRest())));
        HardStop stop = assessment.analysis().hardStop();
        BarPose working = state.atHardStop();
        if (stop != null && working != null) {
            stances.add(new BarView.Stance(
                    "working",
                    "At the hard stop",
                    "At " + g(stop) + " " + tilted(working) + "; the front gets " + show.percent(working.frontShare())
                            + " of the push.",
                    BarOutline.of(bar, working)));
        }
        addFailed(stances, bar, "front", state.frontFailed());
        addFailed(stances, bar, "rear", state.rearFailed());
        return List.copyOf(stances);
    }

    private void addFailed(List<BarView.Stance> stances, Bar bar, String circuit, @Nullable FailedPose failed) {
        if (failed != null) {
            stances.add(new BarView.Stance(
                    circuit + "_failed",
                    capital(circuit) + " circuit failed",
                    "At the same push the " + circuit + " rod runs " + length(run(circuit, failed.pose()))
                            + " ahead until " + end(failed) + ". The pad is then " + length(failed.padTravelM())
                            + " down" + pastStop(failed) + ".",
                    BarOutline.of(bar, failed.pose())));
        }
    }

    private static String pastStop(FailedPose failed) {
        return failed.pastPedalStop() ? ", but the pedal meets its stop before and the bar does not get this far" : "";
    }

    private static double run(String circuit, BarPose pose) {
        return circuit.equals("front") ? pose.frontM() : pose.rearM();
    }

    private static String end(FailedPose failed) {
        return failed.binds() ? "the bar binds at its largest tilt" : "its master is at its end";
    }

    private String tilted(BarPose pose) {
        return Math.abs(pose.tiltRad()) < SQUARE
                ? "the bar stands square"
                : "the bar is tilted by " + show.value(Math.abs(pose.tiltRad()), Dimension.ANGLE) + ", " + ahead(pose)
                        + " rod ahead";
    }

    private static String ahead(BarPose pose) {
        return pose.tiltRad() > 0 ? "front" : "rear";
    }

    private BarView.Range range(BarState bar) {
        return new BarView.Range(
                bar.turnsLeftToFront(),
                bar.turnsLeftToRear(),
                turns(bar.turnsLeftToFront()) + " left toward the front, to a front share of "
                        + show.percent(bar.mostFrontShare()),
                turns(bar.turnsLeftToRear()) + " left toward the rear, to " + show.percent(bar.leastFrontShare()),
                "As set the front gets " + show.percent(bar.frontShare()) + " of the push");
    }

    private String turns(double turns) {
        return show.fixed(turns, 1) + " turns";
    }

    /** The stances as a table, for the report and for people who cannot see the drawing. */
    private PageView.Table table(BarState bar) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(row("at rest", bar.atRest(), "-", "-"));
        BarPose working = bar.atHardStop();
        if (working != null) {
            rows.add(row("at the hard stop", working, "-", "-"));
        }
        addRow(rows, "front circuit failed", bar.frontFailed());
        addRow(rows, "rear circuit failed", bar.rearFailed());
        return new PageView.Table(
                "Balance bar: largest tilt " + show.value(bar.tiltLimitRad(), Dimension.ANGLE) + "; "
                        + turns(bar.turnsLeftToFront()) + " left toward the front, " + turns(bar.turnsLeftToRear())
                        + " toward the rear",
                List.of("stance", "tilt", "front rod", "rear rod", "front share", "ends where", "pad"),
                List.copyOf(rows));
    }

    private void addRow(List<List<String>> rows, String stance, @Nullable FailedPose failed) {
        if (failed != null) {
            String pad = length(failed.padTravelM()) + (failed.pastPedalStop() ? " (past its stop)" : "");
            rows.add(row(stance, failed.pose(), end(failed), pad));
        }
    }

    private List<String> row(String stance, BarPose pose, String end, String pad) {
        String tilt = show.value(Math.abs(pose.tiltRad()), Dimension.ANGLE);
        return List.of(
                stance,
                Math.abs(pose.tiltRad()) < SQUARE ? "square" : tilt + ", " + ahead(pose) + " ahead",
                length(pose.frontM()),
                length(pose.rearM()),
                show.percent(pose.frontShare()),
                end,
                pad);
    }

    private String g(HardStop stop) {
        return show.value(stop.point().decelerationG() * Gravity.STANDARD, Dimension.ACCELERATION);
    }

    private String length(double metre) {
        return show.value(metre, Dimension.LENGTH);
    }

    private static String capital(String word) {
        return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
    }
}
