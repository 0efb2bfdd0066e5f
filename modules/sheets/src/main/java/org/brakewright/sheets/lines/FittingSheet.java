package org.brakewright.sheets.lines;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.brakewright.analysis.lines.LinesState;
import org.brakewright.analysis.lines.LinesState.BleedStep;
import org.brakewright.analysis.lines.LinesState.HoseState;
import org.brakewright.analysis.lines.LinesState.JointState;
import org.brakewright.analysis.lines.LinesState.PartState;
import org.brakewright.analysis.lines.TubeState;
import org.brakewright.findings.Assessment;
import org.brakewright.sheets.Column;
import org.brakewright.sheets.Draft;
import org.brakewright.sheets.Measure;

/** What has to lie on the bench before the lines are joined, every joint, and the order in which they are bled. */
public final class FittingSheet {
    private FittingSheet() {}

    /** The sheet of a car with lines. */
    public static Optional<Draft> of(Assessment assessment) {
        LinesState lines = assessment.analysis().lines();
        return lines == null ? Optional.empty() : Optional.of(draft(lines));
    }

    private static Draft draft(LinesState lines) {
        Column column = new Column()
                .heading("Fittings")
                .table(List.of(0.6, 4.0), fittings(lines))
                .heading("Parts")
                .table(List.of(2.4, 1.8, 1.0, 1.0, 1.6), parts(lines.parts()))
                .heading("Joints")
                .table(List.of(2.6, 0.7, 2.2, 2.0, 1.4, 1.8), joints(lines.joints()));
        if (!lines.bleeding().isEmpty()) {
            column.heading("Bleeding, in this order").table(List.of(0.6, 3.4, 1.6), bleeding(lines.bleeding()));
        }
        column.words(List.of(
                "Fittings are counted from the joints; buy by thread and seat, not by looks: nuts of different threads start in each other's ports.",
                "Bleed until no bubble comes, keep the reservoirs above their outlets, and never use fluid twice."));
        return new Draft("fittings", "fittings, joints and bleeding", Draft.Use.SETTING, column, List.of("plumbing"));
    }

    private static List<List<String>> fittings(LinesState lines) {
        Map<String, Integer> counts = new TreeMap<>();
        for (JointState joint : lines.joints()) {
            if (!joint.nut().equals("none")) {
                counts.merge(
                        "nut " + LineWords.thread(joint.nut()) + " for a " + LineWords.form(joint.form()),
                        1,
                        Integer::sum);
            } else {
                counts.merge(LineWords.form(joint.form()) + " end", 1, Integer::sum);
            }
        }
        for (HoseState hose : lines.hoses()) {
            counts.merge("hose of " + Measure.both(hose.lengthM()), 1, Integer::sum);
        }
        int clips = lines.tubes().stream()
                .map(TubeState::clips)
                .flatMap(Stream::ofNullable)
                .mapToInt(each -> each.alongM().size())
                .sum();
        if (clips > 0) {
            counts.put("clip", clips);
        }
        var rows = new ArrayList<List<String>>();
        rows.add(List.of("count", "what"));
        counts.forEach((what, count) -> rows.add(List.of("" + count, what)));
        return rows;
    }

    private static List<List<String>> parts(List<PartState> parts) {
        var rows = new ArrayList<List<String>>();
        rows.add(List.of("part", "kind", "circuit", "bleeder", "way from its master"));
        for (PartState part : parts) {
            rows.add(List.of(
                    part.name(),
                    LineWords.plain(part.kind().name()),
                    LineWords.plain(part.circuit().name()),
                    part.bleeder() ? "yes" : "-",
                    Measure.metric(part.wayM())));
        }
        return rows;
    }

    private static List<List<String>> joints(List<JointState> joints) {
        var rows = new ArrayList<List<String>>();
        rows.add(List.of("line", "end", "goes to", "form", "nut", "fits"));
        for (JointState joint : joints) {
            rows.add(List.of(
                    joint.line(),
                    joint.atStart() ? "start" : "end",
                    joint.part(),
                    LineWords.form(joint.form()),
                    LineWords.thread(joint.nut()),
                    joint.misfits().isEmpty()
                            ? "yes"
                            : "NO: " + LineWords.misfit(joint.misfits().getFirst())));
        }
        return rows;
    }

    private static List<List<String>> bleeding(List<BleedStep> steps) {
        var rows = new ArrayList<List<String>>();
        rows.add(List.of("step", "open", "way from the master"));
        for (BleedStep step : steps) {
            rows.add(List.of("" + rows.size(), String.join(" and ", step.bleeders()), Measure.metric(step.wayM())));
        }
        return rows;
    }
}
