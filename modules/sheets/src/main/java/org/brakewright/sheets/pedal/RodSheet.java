package org.brakewright.sheets.pedal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakewright.analysis.clutch.ClutchState;
import org.brakewright.analysis.pedal.PushrodState;
import org.brakewright.findings.Assessment;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedPedal;
import org.brakewright.model.resolved.ResolvedPushrod;
import org.brakewright.sheets.Column;
import org.brakewright.sheets.Draft;
import org.brakewright.sheets.Measure;
import org.jspecify.annotations.Nullable;

/** The pushrods at true scale: what is cut, how much thread, and how far each can be set. */
public final class RodSheet {
    private RodSheet() {}

    /**
     * One pedal.
     *
     * @param path of it in the build file
     * @param lead of the front clevis at rest, m; 0 without a balance bar
     */
    private record One(String name, String path, ResolvedPedal pedal, double lead) {}

    /** The sheets of the pedals whose rods are known: brake, clutch. */
    public static List<Draft> of(Assessment assessment) {
        var drafts = new ArrayList<Draft>();
        One brake = new One("brake", "pedal", assessment.resolved().pedal(), lead(assessment));
        add(drafts, brake, assessment.analysis().pedal().pushrods());
        ClutchState clutch = assessment.analysis().clutch();
        assessment.resolved().clutch().ifPresent(resolved -> {
            One one = new One("clutch", "clutch.pedal", resolved.pedal(), 0);
            add(drafts, one, clutch == null ? null : clutch.pushrod());
        });
        return List.copyOf(drafts);
    }

    private static double lead(Assessment assessment) {
        return switch (assessment.resolved().apply()) {
            case ResolvedApply.Twin twin -> twin.bar().stance().restLead();
            case ResolvedApply.Tandem tandem -> 0;
        };
    }

    private static void add(List<Draft> drafts, One one, @Nullable PushrodState state) {
        Optional<ResolvedPushrod> rod = one.pedal().pushrod();
        if (state != null && rod.isPresent()) {
            drafts.add(draft(one, rod.get(), state));
        }
    }

    private static Draft draft(One one, ResolvedPushrod rod, PushrodState state) {
        Column column = new Column()
                .add(RodPicture.of(rod, state))
                .table(List.of(1.0, 1.0), table(one, rod, state))
                .words(List.of(
                        "Square the ends, round the one that pushes the piston, and drill a witness hole through the"
                                + " clevis one thread diameter behind its face: a wire that goes in tells that the rod is out too far.",
                        "Lock with the jam nut, and make sure that nothing but a tool can free pin and clip."));
        return new Draft(
                one.name() + "-pushrods",
                one.name() + (state.count() == 1 ? " pushrod" : " pushrods"),
                Draft.Use.CUTTING,
                column,
                List.of(one.path() + ".pushrod", one.path() + ".mechanism", "apply.balance_bar.rod_length"));
    }

    private static List<List<String>> table(One one, ResolvedPushrod rod, PushrodState state) {
        var rows = new ArrayList<List<String>>();
        rows.add(List.of("what", "size"));
        rows.add(List.of("rods to cut", "" + state.count()));
        rows.add(List.of("clevis pin to end in the piston", Measure.both(state.pinToEndM())));
        rows.add(List.of("cut the rod to", Measure.both(state.cutM())));
        rows.add(List.of("thread on the rod", Measure.both(state.threadM())));
        rows.add(List.of("thread diameter and pitch", thread(rod)));
        rows.add(List.of("screwed into the clevis as set", Measure.both(state.engagementM())));
        rows.add(List.of("can be made longer and shorter by", Measure.both(state.rangeM())));
        rows.add(List.of("one turn changes its length by", Measure.fixed(Measure.mm(state.turnM()), 2) + " mm"));
        if (one.lead() != 0) {
            String longer = one.lead() < 0 ? "front rod longer than the rear" : "rear rod longer than the front";
            rows.add(List.of("set the " + longer + " one by", Measure.both(Math.abs(one.lead()))));
        }
        return rows;
    }

    private static String thread(ResolvedPushrod rod) {
        return Measure.both(rod.threadDiameter()) + ", pitch " + Measure.fixed(Measure.mm(rod.threadPitch()), 2)
                + " mm";
    }
}
