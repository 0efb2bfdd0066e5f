package org.brakewright.sheets.balance;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.brakewright.analysis.balance.BarOutline;
import org.brakewright.analysis.balance.BarPose;
import org.brakewright.analysis.balance.BarState;
import org.brakewright.drawing.Shape;
import org.brakewright.findings.Assessment;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedApply.Bar;
import org.brakewright.sheets.Column;
import org.brakewright.sheets.Draft;
import org.brakewright.sheets.Measure;
import org.brakewright.sheets.Row;

/** The balance bar at true scale, at rest and at the hard stop, with what one turn does and room for notes. */
public final class BarSheet {
    private static final int OPEN_ROWS = 6;

    private BarSheet() {}

    /** The sheet of a car with a balance bar. */
    public static Optional<Draft> of(Assessment assessment) {
        BarState state = assessment.analysis().bar();
        return state != null && assessment.resolved().apply() instanceof ResolvedApply.Twin twin
                ? Optional.of(draft(twin.bar(), state))
                : Optional.empty();
    }

    private static Draft draft(Bar bar, BarState state) {
        Column column = new Column()
                .add(stances(bar, state))
                .heading("As set")
                .table(List.of(1.0, 1.0), asSet(bar, state))
                .heading("Every change of the setting")
                .table(List.of(2.0, 2.0, 2.0, 2.0, 5.0), record());
        return new Draft("balance-bar", "balance bar setting", Draft.Use.SETTING, column, List.of("apply.balance_bar"));
    }

    private static List<Shape> stances(Bar bar, BarState state) {
        Row row = new Row().add(BarPicture.of("at rest", bar, BarOutline.of(bar, state.atRest())));
        BarPose working = state.atHardStop();
        return (working == null ? row : row.add(BarPicture.of("at the hard stop", bar, BarOutline.of(bar, working))))
                .shapes();
    }

    private static List<List<String>> asSet(Bar bar, BarState state) {
        var rows = new ArrayList<List<String>>();
        rows.add(List.of("what", "as computed"));
        rows.add(List.of("bearing from the middle, toward the front master", Measure.both(bar.offset())));
        rows.add(List.of("front circuit's share of the push", Measure.percent(state.frontShare())));
        rows.add(List.of(
                "one turn of the adjuster changes the share by",
                Measure.fixed(100 * state.shareChangePerTurn(), 1) + " % of the push"));
        rows.add(List.of(
                "turns left toward the front / toward the rear",
                Measure.fixed(state.turnsLeftToFront(), 1) + " / " + Measure.fixed(state.turnsLeftToRear(), 1)));
        rows.add(List.of("tilt at the hard stop, largest tilt", tilts(state)));
        rows.add(List.of(
                "front clevis ahead of the rear one at rest",
                Measure.both(bar.stance().restLead())));
        rows.add(List.of(
                "rods, clevis pin to end in the piston",
                Measure.both(bar.stance().rodLength())));
        rows.add(List.of("end float of both clevises together, as measured", sideFloat(state)));
        return rows;
    }

    private static String tilts(BarState state) {
        return Measure.degrees(Math.abs(state.tiltRad())) + ", " + Measure.degrees(state.tiltLimitRad());
    }

    private static String sideFloat(BarState state) {
        Double sideFloat = state.sideFloatM();
        return sideFloat == null ? "" : Measure.both(sideFloat);
    }

    private static List<List<String>> record() {
        var rows = new ArrayList<List<String>>();
        rows.add(List.of("date", "turns", "toward", "turns in all", "what was seen, who locked it"));
        rows.addAll(Collections.nCopies(OPEN_ROWS, List.of("", "", "", "", "")));
        return rows;
    }
}
