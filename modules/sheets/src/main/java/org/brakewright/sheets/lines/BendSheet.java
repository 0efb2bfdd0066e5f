package org.brakewright.sheets.lines;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.lines.LinesState;
import org.brakewright.analysis.lines.LinesState.JointState;
import org.brakewright.analysis.lines.TubeState;
import org.brakewright.analysis.lines.TubeState.BendRow;
import org.brakewright.analysis.lines.TubeState.ShortStraight;
import org.brakewright.findings.Assessment;
import org.brakewright.sheets.Column;
import org.brakewright.sheets.Draft;
import org.brakewright.sheets.Measure;

/** One tube for the bender: how long to cut it, where each bend begins, how far to turn and to bend. */
public final class BendSheet {
    private BendSheet() {}

    /** One sheet a tube, in the order of the build file. */
    public static List<Draft> of(Assessment assessment) {
        LinesState lines = assessment.analysis().lines();
        var drafts = new ArrayList<Draft>();
        if (lines != null) {
            for (TubeState tube : lines.tubes()) {
                drafts.add(draft(tube, lines, drafts.size()));
            }
        }
        return List.copyOf(drafts);
    }

    private static Draft draft(TubeState tube, LinesState lines, int index) {
        Column column = new Column();
        BendPicture.of(tube).forEach(column::add);
        if (!tube.bends().isEmpty()) {
            column.heading("Bends, from the start").table(List.of(0.7, 1.6, 1.6, 1.7, 1.2, 1.2, 1.2), bends(tube));
        }
        column.table(List.of(1.0, 1.0), sizes(tube))
                .heading("Ends")
                .table(List.of(0.7, 2.2, 2.2, 1.4, 1.6, 2.4), ends(tube, lines));
        tube.straights().forEach(straight -> column.words(List.of(tooShort(straight))));
        column.words(words(tube));
        return new Draft(
                "bend-" + (index + 1),
                tube.name() + ", bend sheet",
                Draft.Use.CUTTING,
                column,
                List.of("plumbing.tubes[" + index + "]", "plumbing.bender"));
    }

    private static List<List<String>> bends(TubeState tube) {
        var rows = new ArrayList<List<String>>();
        rows.add(List.of("bend", "feed", "mark at", "turn the tube", "bend to", "leaves", "radius"));
        for (BendRow row : tube.bends()) {
            rows.add(List.of(
                    "" + rows.size(),
                    Measure.metric(row.straightM()),
                    Measure.metric(row.markM()),
                    rows.size() == 1 ? "-" : turn(row.rotationRad()),
                    Measure.degrees(row.setRad()),
                    Measure.degrees(row.angleRad()),
                    Measure.metric(row.radiusM())));
        }
        return rows;
    }

    private static String turn(double radian) {
        return Math.abs(radian) < 1e-9 ? "0.0°" : Measure.degrees(Math.abs(radian)) + (radian > 0 ? " right" : " left");
    }

    private static List<List<String>> sizes(TubeState tube) {
        return List.of(
                List.of("what", "size"),
                List.of("tube", LineWords.plain(tube.material()) + ", " + Measure.both(tube.outsideDiameterM())),
                List.of("wall", Measure.fixed(Measure.mm(tube.wallM()), 2) + " mm"),
                List.of("cut to, flares included", Measure.both(tube.cutM())),
                List.of("length along its middle, seat to seat", Measure.both(tube.developedM())),
                List.of("straight after the last bend", Measure.metric(tube.tailM())));
    }

    private static List<List<String>> ends(TubeState tube, LinesState lines) {
        var rows = new ArrayList<List<String>>();
        rows.add(List.of("end", "goes to", "form", "nut", "seat in the port", "fits"));
        for (JointState joint : lines.joints()) {
            if (joint.line().equals(tube.name())) {
                rows.add(List.of(
                        joint.atStart() ? "start" : "end",
                        joint.part(),
                        LineWords.form(joint.form()),
                        LineWords.thread(joint.nut()),
                        LineWords.plain(joint.seat()),
                        joint.misfits().isEmpty()
                                ? "yes"
                                : "NO: " + LineWords.misfit(joint.misfits().getFirst())));
            }
        }
        return rows;
    }

    private static String tooShort(ShortStraight straight) {
        return "Straight " + straight.number() + " is " + Measure.metric(straight.haveM()) + " long and has to be "
                + Measure.metric(straight.needM()) + " for the " + (straight.forNut() ? "nut." : "bender.");
    }

    private static List<String> words(TubeState tube) {
        var words = new ArrayList<String>();
        words.add(
                "Deburr inside and out, slide both nuts on the right way round before the second flare, and look at each flare:"
                        + " a cracked or lopsided one leaks.");
        if (!tube.bends().isEmpty()) {
            words.add(
                    "\"Mark at\" is counted from the cut end at the start, its flare not yet made; \"bend to\" allows for springback."
                            + " Turn right: clockwise for one who looks along the tube away from the start.");
            words.add(
                    "Pictures: isometric, fitted into their fields, not to scale; the ring is the start, dashes are not bent yet.");
        }
        return words;
    }
}
