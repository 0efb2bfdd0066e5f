package org.brakewright.sheets.pedal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakewright.drawing.Shape;
import org.brakewright.findings.Assessment;
import org.brakewright.model.resolved.ResolvedMechanism;
import org.brakewright.model.resolved.ResolvedPedal;
import org.brakewright.sheets.Column;
import org.brakewright.sheets.Draft;
import org.brakewright.sheets.Measure;
import org.jspecify.annotations.Nullable;

/** A pedal from the side at true scale: where pivot, pin and pad are drilled and cut, and the arc of its pad. */
public final class ArmSheet {
    private ArmSheet() {}

    /** The sheets of the pedals whose points are known: brake, clutch. */
    public static List<Draft> of(Assessment assessment) {
        var drafts = new ArrayList<Draft>();
        var stop = assessment.analysis().hardStop();
        add(
                drafts,
                "brake",
                "pedal",
                assessment.resolved().pedal(),
                stop == null ? null : stop.point().pedalTravelM());
        assessment.resolved().clutch().ifPresent(clutch -> add(drafts, "clutch", "clutch.pedal", clutch.pedal(), null));
        return List.copyOf(drafts);
    }

    private static void add(
            List<Draft> drafts, String name, String path, ResolvedPedal pedal, @Nullable Double hardStop) {
        pedal.mechanism().ifPresent(mechanism -> drafts.add(draft(name, path, pedal, mechanism, hardStop)));
    }

    private static Draft draft(
            String name, String path, ResolvedPedal pedal, ResolvedMechanism mechanism, @Nullable Double hardStop) {
        List<Shape> picture = new ArmPicture(mechanism).shapes(pedal.travelToStop(), Optional.ofNullable(hardStop));
        Column column = new Column()
                .add(picture)
                .table(List.of(1.0, 1.0), table(pedal, mechanism))
                .words(List.of("Seen from the left of the car, its nose to the right. Drill pivot and pin through the"
                        + " crosses; between them the numbers above count, not the paper."));
        return new Draft(
                name + "-pedal-arm", name + " pedal arm", Draft.Use.TEMPLATE, column, List.of(path + ".mechanism"));
    }

    private static List<List<String>> table(ResolvedPedal pedal, ResolvedMechanism at) {
        return List.of(
                List.of("what", "size"),
                List.of("pivot to pad centre", Measure.both(distance(at.pad(), ArmPicture.PIVOT))),
                List.of("pivot to pushrod pin", Measure.both(distance(at.pin(), ArmPicture.PIVOT))),
                List.of("pin to pad centre", Measure.both(distance(at.pin(), at.pad()))),
                List.of("pin to rod end in the piston", Measure.both(distance(at.pin(), at.socket()))),
                List.of("pedal ratio at rest", Measure.fixed(pedal.ratio(), 2)),
                List.of("pad travel to the stop", Measure.both(pedal.travelToStop())));
    }

    private static double distance(ResolvedMechanism.Point one, ResolvedMechanism.Point other) {
        return Math.hypot(one.x() - other.x(), one.y() - other.y());
    }
}
