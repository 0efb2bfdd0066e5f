package org.brakewright.analysis.resolve;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Optional;
import org.brakewright.model.mount.Arm;
import org.brakewright.model.mount.Mount;
import org.brakewright.model.pedal.Mechanism;
import org.brakewright.model.pedal.Pedal;
import org.brakewright.model.resolved.ResolvedMount.PedalPoints;
import org.brakewright.model.resolved.ResolvedMount.Place;
import org.brakewright.model.resolved.ResolvedMount.Profile;

/** Places the pedal on its mount: from its mechanism, else from the points that stand with the arm. */
final class ResolvePedalPoints {
    private final Values values;
    private final MountPoints points;
    private final MountMaterials materials;

    ResolvePedalPoints(Values values, MountMaterials materials) {
        this.values = values;
        this.points = new MountPoints(values);
        this.materials = materials;
    }

    Optional<PedalPoints> points(Mount mount, Pedal pedal) {
        Arm arm = mount.arm();
        Place pivot = points.place(mount.pivot());
        boolean placed = arm.pad() != null && arm.pin() != null && arm.socket() != null;
        boolean anyPlaced = arm.pad() != null || arm.pin() != null || arm.socket() != null;
        Mechanism mechanism = pedal.mechanism();
        if (mechanism == null ? !placed : anyPlaced) {
            values.problem(
                    "mount.arm",
                    "",
                    mechanism == null
                            ? "Where pad, pin and the rod's far end lie is not told, so nobody knows how the pedal pulls at its pivot."
                            : "Pad, pin and the rod's far end are told twice, here and by pedal.mechanism.",
                    mechanism == null ? "pad, pin and socket, or pedal.mechanism" : "keep pedal.mechanism");
            return Optional.empty();
        }
        if (mechanism == null && arm.padOffset() != null) {
            values.problem(
                    "mount.arm.pad_offset",
                    Values.written(arm.padOffset()),
                    "How far the pad stands aside is told twice, here and by mount.arm.pad.",
                    "keep mount.arm.pad");
        }
        return Optional.of(mechanism == null ? written(arm, pivot) : known(mechanism, arm, pivot));
    }

    private PedalPoints written(Arm arm, Place pivot) {
        return new PedalPoints(
                pivot,
                points.place(requireNonNull(arm.pad())),
                points.place(requireNonNull(arm.pin())),
                points.place(requireNonNull(arm.socket())),
                profile(arm),
                materials.of(arm.material(), "mount.arm.material"));
    }

    private PedalPoints known(Mechanism known, Arm arm, Place pivot) {
        double aside = values.take(arm.padOffset(), "mount.arm.pad_offset", MountDefaults.PAD_OFFSET);
        return new PedalPoints(
                pivot,
                from(pivot, values.need(known.padForward()), aside, values.need(known.padUp())),
                from(pivot, values.need(known.pinForward()), 0, values.need(known.pinUp())),
                from(pivot, values.need(known.socketForward()), 0, values.need(known.socketUp())),
                profile(arm),
                materials.of(arm.material(), "mount.arm.material"));
    }

    private Profile profile(Arm arm) {
        return new ResolveBars(values, materials, List.of()).profile(arm.profile());
    }

    private static Place from(Place pivot, double forward, double left, double up) {
        return new Place(pivot.x() + forward, pivot.y() + left, pivot.z() + up);
    }
}
