package org.brakewright.sheets.footwell;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.footwell.FootwellState;
import org.brakewright.analysis.footwell.FootwellState.GapState;
import org.brakewright.findings.Assessment;
import org.brakewright.model.resolved.ResolvedFootwell;
import org.brakewright.sheets.Column;
import org.brakewright.sheets.Draft;
import org.brakewright.sheets.Measure;

/** The pedals from above, from the left and from the driver, at true scale. */
public final class FootwellSheet {
    private static final String HOW = "True scale: tape it down with the zero lines of the car on those of the sheet.";

    private FootwellSheet() {}

    /** One sheet a view, of a car whose footwell is told. */
    public static List<Draft> of(Assessment assessment) {
        FootwellState state = assessment.analysis().footwell();
        var drafts = new ArrayList<Draft>();
        if (state != null) {
            ResolvedFootwell told = assessment.resolved().footwell().orElseThrow();
            for (View view : View.values()) {
                drafts.add(draft(view, told, state));
            }
        }
        return List.copyOf(drafts);
    }

    private static Draft draft(View view, ResolvedFootwell told, FootwellState state) {
        Column column = new Column().add(FootwellPicture.of(view, told, state));
        if (view == View.FRONT) {
            column.heading("Gaps and steps").table(List.of(2.0, 1.5, 1.5, 1.5), rows(state));
        }
        column.words(List.of(
                view.words() + " " + HOW,
                "Whole lines: pads at rest. Dashed: at the end of their travel, and the brake at the hard stop. Chain: the way"
                        + " of the middle of each pad. Numbers along the edges are from the zero of the lines, mm."));
        return new Draft(
                "footwell-" + view.key(), "footwell, " + view.title(), Draft.Use.TEMPLATE, column, List.of("footwell"));
    }

    private static List<List<String>> rows(FootwellState state) {
        var rows = new ArrayList<List<String>>();
        rows.add(List.of("pads", "gap", "step at rest", "at the hard stop"));
        for (GapState gap : state.gaps()) {
            Double working = gap.stepWorkingM();
            rows.add(List.of(
                    FootwellPicture.word(gap.left()) + " and " + FootwellPicture.word(gap.right()),
                    Measure.both(gap.gapM()),
                    Measure.metric(gap.stepAtRestM()),
                    working == null ? "-" : Measure.metric(working)));
        }
        return rows;
    }
}
