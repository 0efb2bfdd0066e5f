package org.brakewright.sheets.pedal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakewright.analysis.clutch.ClutchState;
import org.brakewright.analysis.pedal.PushrodState;
import org.brakewright.findings.Assessment;
import org.brakewright.model.resolved.ResolvedPedal;
import org.brakewright.model.resolved.ResolvedPushrod;
import org.brakewright.sheets.Column;
import org.brakewright.sheets.Draft;
import org.brakewright.sheets.Measure;
import org.jspecify.annotations.Nullable;

/** The pushrods at true scale: what is cut, how much thread, and how far each can be set. */
public final class RodSheet {
    private RodSheet() {}

    /** The sheets of the pedals whose rods are known: brake, clutch. */
    public static List<Draft> of(Assessment assessment) {
        var drafts = new ArrayList<Draft>();
        add(
                drafts,
                "brake",
                "pedal",
                assessment.resolved().pedal(),
                assessment.analysis().pedal().pushrods());
        ClutchState clutch = assessment.analysis().clutch();
        assessment
                .resolved()
                .clutch()
                .ifPresent(resolved -> add(
                        drafts, "clutch", "clutch.pedal", resolved.pedal(), clutch == null ? null : clutch.pushrod()));
        return List.copyOf(drafts);
    }

    private static void add(
            List<Draft> drafts, String name, String path, ResolvedPedal pedal, @Nullable PushrodState state) {
        Optional<ResolvedPushrod> rod = pedal.pushrod();
        if (state != null && rod.isPresent()) {
            drafts.add(draft(name, path, rod.get(), state));
        }
    }

    private static Draft draft(String name, String path, ResolvedPushrod rod, PushrodState state) {
        Column column = new Column()
                .add(RodPicture.of(rod, state))
                .table(List.of(1.0, 1.0), table(rod, state))
                .words(List.of(
                        "Square the ends, round the one that pushes the piston, and drill a witness hole through the"
                                + " clevis one thread diameter behind its face: a wire that goes in tells that the rod is out too far.",
                        "Lock with the jam nut, and make sure that nothing but a tool can free pin and clip."));
        return new Draft(
                name + "-pushrods",
                name + (state.count() == 1 ? " pushrod" : " pushrods"),
                Draft.Use.CUTTING,
                column,
                List.of(path + ".pushrod", path + ".mechanism", "apply.balance_bar.rod_length"));
    }

    private static List<List<String>> table(ResolvedPushrod rod, PushrodState state) {
        return List.of(
                List.of("what", "size"),
                List.of("rods to cut", "" + state.count()),
                List.of("clevis pin to end in the piston", Measure.both(state.pinToEndM())),
                List.of("cut the rod to", Measure.both(state.cutM())),
                List.of("thread on the rod", Measure.both(state.threadM())),
                List.of("thread diameter and pitch", thread(rod)),
                List.of("screwed into the clevis as set", Measure.both(state.engagementM())),
                List.of("can be made longer and shorter by", Measure.both(state.rangeM())),
                List.of("one turn changes its length by", Measure.fixed(Measure.mm(state.turnM()), 2) + " mm"));
    }

    private static String thread(ResolvedPushrod rod) {
        return Measure.both(rod.threadDiameter()) + ", pitch " + Measure.fixed(Measure.mm(rod.threadPitch()), 2)
                + " mm";
    }
}
