package org.brakewright.app.page;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.Analysis;
import org.brakewright.analysis.lines.LinesState;
import org.brakewright.analysis.lines.LinesState.Bar;
import org.brakewright.analysis.lines.LinesState.BleedStep;
import org.brakewright.analysis.lines.LinesState.CutState;
import org.brakewright.analysis.lines.LinesState.JointState;
import org.brakewright.analysis.lines.TubeState;
import org.brakewright.analysis.lines.TubeState.BendRow;
import org.brakewright.analysis.lines.TubeState.Clips;
import org.brakewright.analysis.lines.TubeState.Gap;
import org.brakewright.app.words.Show;
import org.brakewright.quantity.Dimension;
import org.brakewright.quantity.Unit;
import org.brakewright.sheets.lines.LineWords;

/** The lines in tables: tubes, how each is bent, what is cut of which length, joints, bleeding. */
public final class LineTables {
    private final Show show;

    /** The tables in a system of units. */
    public LineTables(Show show) {
        this.show = show;
    }

    /** All of them; empty when no routes are told. */
    public List<PageView.Table> of(Analysis analysis) {
        LinesState lines = analysis.lines();
        if (lines == null) {
            return List.of();
        }
        List<PageView.Table> tables = new ArrayList<>();
        tables.add(table(
                "Tubes",
                List.of(
                        "tube",
                        "of",
                        "cut to",
                        "bends",
                        "bursts at",
                        "most in it",
                        "swells by",
                        "longest unheld",
                        "nearest"),
                lines.tubes().stream().map(this::tube).toList()));
        tables.add(table(
                "How each tube is bent, from its start",
                List.of("tube", "bend", "feed", "mark at", "turn the tube", "bend to", "leaves", "radius"),
                lines.tubes().stream().flatMap(tube -> bends(tube).stream()).toList()));
        tables.add(table(
                "What is cut of which length",
                List.of("tube", "length of stock", "piece", "cut to"),
                lines.cuts().stream()
                        .flatMap(cut -> cuts(cut, lines.tubes()).stream())
                        .toList()));
        tables.add(table(
                "Joints",
                List.of("line", "end", "goes to", "form", "nut", "seat", "fits"),
                lines.joints().stream().map(LineTables::joint).toList()));
        tables.add(table(
                "Bleeding, in this order",
                List.of("open", "way from the master"),
                lines.bleeding().stream().map(this::bleeding).toList()));
        return tables.stream().filter(table -> !table.rows().isEmpty()).toList();
    }

    private static PageView.Table table(String caption, List<String> columns, List<List<String>> rows) {
        return new PageView.Table(caption, columns, rows);
    }

    private List<String> tube(TubeState tube) {
        Clips clips = tube.clips();
        Gap gap = tube.gaps().isEmpty() ? null : tube.gaps().getFirst();
        return List.of(
                tube.name(),
                LineWords.plain(tube.material()) + ", " + length(tube.outsideDiameterM()) + " by "
                        + length(tube.wallM()),
                cut(tube.cutM()),
                "" + tube.bends().size(),
                show.value(tube.strength().burstPa(), Dimension.PRESSURE),
                show.value(tube.strength().highestPa(), Dimension.PRESSURE),
                show.value(tube.strength().swellM3(), Dimension.VOLUME),
                clips == null ? "not told" : length(clips.longestM()),
                gap == null ? "-" : gap.obstacle() + ", " + length(gap.gapM()));
    }

    private List<List<String>> bends(TubeState tube) {
        List<List<String>> rows = new ArrayList<>();
        for (BendRow row : tube.bends()) {
            rows.add(List.of(
                    tube.name(),
                    "" + (rows.size() + 1),
                    cut(row.straightM()),
                    cut(row.markM()),
                    rows.isEmpty() ? "-" : turn(row.rotationRad()),
                    show.value(row.setRad(), Dimension.ANGLE),
                    show.value(row.angleRad(), Dimension.ANGLE),
                    length(row.radiusM())));
        }
        return rows;
    }

    private String turn(double radian) {
        String angle = show.value(Math.abs(radian), Dimension.ANGLE);
        return Math.abs(radian) < 1e-9 ? angle : angle + (radian > 0 ? " right" : " left");
    }

    private List<List<String>> cuts(CutState cut, List<TubeState> tubes) {
        List<List<String>> rows = new ArrayList<>();
        String of =
                LineWords.plain(cut.material()) + ", " + length(cut.outsideDiameterM()) + " by " + length(cut.wallM());
        for (int i = 0; i < cut.bars().size(); i++) {
            Bar bar = cut.bars().get(i);
            String stock = (i + 1) + ", " + length(bar.stockM());
            tubes.stream()
                    .filter(tube -> bar.tubes().contains(tube.name()))
                    .forEach(tube -> rows.add(List.of(of, stock, tube.name(), cut(tube.cutM()))));
            rows.add(List.of(of, stock, "left over", cut(bar.leftM())));
        }
        return rows;
    }

    private static List<String> joint(JointState joint) {
        return List.of(
                joint.line(),
                joint.atStart() ? "start" : "end",
                joint.part(),
                LineWords.form(joint.form()),
                LineWords.thread(joint.nut()),
                LineWords.plain(joint.seat()),
                joint.misfits().isEmpty()
                        ? "yes"
                        : "NO: "
                                + String.join(
                                        ", ",
                                        joint.misfits().stream()
                                                .map(LineWords::misfit)
                                                .toList()));
    }

    private List<String> bleeding(BleedStep step) {
        return List.of(String.join(" and ", step.bleeders()), length(step.wayM()));
    }

    private String length(double metre) {
        return show.value(metre, Dimension.LENGTH);
    }

    /** A length to be measured off, never in metres or feet. */
    private String cut(double metre) {
        Unit unit = show.system().unit(Dimension.LENGTH);
        return show.value(metre, Dimension.LENGTH, unit);
    }
}
