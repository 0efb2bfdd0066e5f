package org.brakewright.app.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.brakewright.analysis.Analysis;
import org.brakewright.analysis.footwell.FootwellState;
import org.brakewright.analysis.footwell.FootwellState.GapState;
import org.brakewright.analysis.footwell.FootwellState.HeelToeState;
import org.brakewright.analysis.footwell.FootwellState.Letter;
import org.brakewright.analysis.footwell.FootwellState.PadState;
import org.brakewright.analysis.footwell.FootwellState.SpacingState;
import org.brakewright.analysis.footwell.FootwellState.SweepState;
import org.brakewright.analysis.footwell.FootwellState.Which;
import org.brakewright.app.words.Show;
import org.brakewright.model.resolved.ResolvedMount.Place;
import org.brakewright.quantity.Dimension;
import org.brakewright.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** The pedals side by side: gaps, steps, the published spacing, what comes near, one foot on two pads. */
public final class FootwellPanel {
    private final Show show;

    /** The panel in a system of units. */
    public FootwellPanel(Show show) {
        this.show = show;
    }

    /** The panel; null when no footwell is told. */
    PageView.@Nullable Tabled of(Analysis analysis) {
        FootwellState footwell = analysis.footwell();
        return footwell == null ? null : new PageView.Tabled(sentence(footwell), tables(footwell));
    }

    /** Heel and toe in one sentence; empty when no footwell is told. */
    public String sentence(Analysis analysis) {
        FootwellState footwell = analysis.footwell();
        return footwell == null ? "" : sentence(footwell);
    }

    /** All tables; empty when no footwell is told. */
    public List<PageView.Table> tables(Analysis analysis) {
        FootwellState footwell = analysis.footwell();
        return footwell == null ? List.of() : tables(footwell);
    }

    private String sentence(FootwellState footwell) {
        String shoe = "The shoe is " + length(footwell.shoeM()) + " broad.";
        HeelToeState heelToe = footwell.heelToe();
        if (heelToe == null) {
            return shoe + " No push gives the hard stop, so heel and toe is not judged.";
        }
        String step = heelToe.stepM() >= 0 ? " nearer to the driver than" : " further away than";
        return shoe + " With the brake at the hard stop the throttle stands " + length(Math.abs(heelToe.stepM())) + step
                + " the brake; one foot on both needs a shoe of " + length(heelToe.needsM()) + " and a step from "
                + length(heelToe.lowestM()) + " to " + length(heelToe.highestM()) + ": "
                + (heelToe.works() ? "it can be done." : "it cannot be done so.");
    }

    private List<PageView.Table> tables(FootwellState footwell) {
        List<PageView.Table> tables = new ArrayList<>();
        tables.add(new PageView.Table(
                "Gaps and steps between the pads",
                List.of("pads", "gap", "step at rest", "step at the hard stop", "shoe reaches past the pad"),
                footwell.gaps().stream().map(this::gap).toList()));
        tables.add(new PageView.Table(
                "Spacing by UN R35",
                List.of("letter", "what", "here", "asked for", "met"),
                footwell.spacing().stream().map(this::spacing).toList()));
        tables.add(new PageView.Table(
                "What comes near the pedals on their way",
                List.of("pedal", "comes near", "least gap", "at a travel of", "place on the pedal", "shift"),
                footwell.sweeps().stream().map(this::sweep).toList()));
        tables.add(new PageView.Table(
                "Where the pads are",
                List.of("pad", "size", "at rest", "at the hard stop", "at the end"),
                footwell.pads().stream().map(this::pad).toList()));
        return tables.stream().filter(table -> !table.rows().isEmpty()).toList();
    }

    private List<String> gap(GapState gap) {
        Double working = gap.stepWorkingM();
        return List.of(
                word(gap.left()) + " and " + word(gap.right()),
                length(gap.gapM()),
                step(gap.stepAtRestM(), gap.right()),
                working == null ? "-" : step(working, gap.right()),
                length(gap.overhangM()));
    }

    private String step(double step, Which right) {
        return Math.abs(step) < 5e-5
                ? "level"
                : length(Math.abs(step)) + ", " + word(right) + (step > 0 ? " nearer" : " further");
    }

    private List<String> spacing(SpacingState spacing) {
        Double most = spacing.mostM();
        return List.of(
                spacing.letter().name(),
                letter(spacing.letter()),
                length(spacing.foundM()),
                most == null
                        ? "at least " + length(spacing.leastM())
                        : length(spacing.leastM()) + " to " + length(most),
                spacing.met() ? "yes" : "NO");
    }

    private static String letter(Letter letter) {
        return switch (letter) {
            case E -> "throttle to brake";
            case F -> "brake to clutch";
            case G -> "clutch to the wall on its left";
            case H -> "brake to the wall on its right";
            case J -> "brake to the wall on its left";
        };
    }

    private List<String> sweep(SweepState sweep) {
        Double shift = sweep.shiftM();
        return List.of(
                word(sweep.which()),
                sweep.obstacle(),
                sweep.gapM() <= 0 ? "touches" : length(sweep.gapM()),
                length(sweep.travelM()),
                place(sweep.at()),
                shift == null ? "-" : length(Math.abs(shift)) + (shift > 0 ? " to the left" : " to the right"));
    }

    private List<String> pad(PadState pad) {
        Place working = pad.working();
        return List.of(
                word(pad.which()),
                length(pad.breadthM()) + " by " + length(pad.heightM()),
                place(pad.rest()),
                working == null ? "-" : place(working),
                place(pad.end()));
    }

    private static String word(Which which) {
        return which.name().toLowerCase(Locale.ROOT);
    }

    private String place(Place at) {
        Unit unit = show.system().unit(Dimension.LENGTH);
        return MountPanel.place(show, unit, at);
    }

    private String length(double metre) {
        return show.value(metre, Dimension.LENGTH);
    }
}
