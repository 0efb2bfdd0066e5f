package org.brakewright.analysis.resolve;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Optional;
import org.brakewright.model.Given;
import org.brakewright.model.mount.Arm;
import org.brakewright.model.mount.Mount;
import org.brakewright.model.pedal.Linkage;
import org.brakewright.model.pedal.Mechanism;
import org.brakewright.model.pedal.Pedal;
import org.brakewright.model.resolved.ResolvedMount.PedalPoints;
import org.brakewright.model.resolved.ResolvedMount.Place;
import org.brakewright.model.resolved.ResolvedMount.Profile;

/** Places the pedal on its mount: from its mechanism or linkage, else from the points that stand with the arm. */
final class ResolvePedalPoints {
    /** Of a rod whose direction alone is known, m; its length changes no force. */
    private static final double ROD = 0.1;

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
        Mechanism mechanism = pedal.mechanism();
        Linkage linkage = pedal.linkage();
        if (contradicts(arm, pedal)) {
            return Optional.empty();
        }
        if (mechanism != null) {
            return Optional.of(known(mechanism, arm, pivot));
        }
        return Optional.of(linkage != null ? leaning(linkage, arm, pivot) : written(arm, pivot));
    }

    private boolean contradicts(Arm arm, Pedal pedal) {
        String known = pedal.mechanism() != null ? "pedal.mechanism" : "pedal.linkage";
        boolean elsewhere = pedal.mechanism() != null || pedal.linkage() != null;
        boolean placed = arm.pad() != null && arm.pin() != null && arm.socket() != null;
        boolean anyPlaced = arm.pad() != null || arm.pin() != null || arm.socket() != null;
        if (elsewhere ? anyPlaced : !placed) {
            values.problem(
                    "mount.arm",
                    "",
                    elsewhere
                            ? "Pad, pin and the rod's far end are told twice, here and by " + known + "."
                            : "Where pad, pin and the rod's far end lie is not told, so nobody knows how the pedal pulls at its pivot.",
                    elsewhere ? "keep " + known : "pad, pin and socket, or pedal.linkage or pedal.mechanism");
            return true;
        }
        if (!elsewhere && arm.padOffset() != null) {
            twice("mount.arm.pad_offset", arm.padOffset(), "How far the pad stands aside", "mount.arm.pad");
        }
        if (arm.lean() != null && pedal.linkage() == null) {
            twice("mount.arm.lean", arm.lean(), "How the arm leans", elsewhere ? known : "mount.arm.pad");
        }
        return false;
    }

    private void twice(String path, Given given, String what, String other) {
        values.problem(
                path, Values.written(given), what + " is told twice, here and by " + other + ".", "keep " + other);
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
        return new PedalPoints(
                pivot,
                from(pivot, values.need(known.padForward()), aside(arm), values.need(known.padUp())),
                from(pivot, values.need(known.pinForward()), 0, values.need(known.pinUp())),
                from(pivot, values.need(known.socketForward()), 0, values.need(known.socketUp())),
                profile(arm),
                materials.of(arm.material(), "mount.arm.material"));
    }

    /** Pin and pad on one line from the pivot; the rod goes forward, and up by its angle. */
    private PedalPoints leaning(Linkage linkage, Arm arm, Place pivot) {
        double lean = values.take(arm.lean(), "mount.arm.lean", MountDefaults.LEAN);
        double s = Math.sin(lean);
        double c = Math.cos(lean);
        double pad = values.need(linkage.padArm());
        double pin = values.need(linkage.pushrodArm());
        double sense = c < 0 ? -1 : 1;
        double rod = lean
                + (sense < 0 ? Math.PI : 0)
                + values.maybe(linkage.pushrodAngle()).orElse(0);
        Place pinAt = from(pivot, pin * s, 0, -pin * c);
        return new PedalPoints(
                pivot,
                from(pivot, pad * s, aside(arm), -pad * c),
                pinAt,
                from(pinAt, ROD * Math.cos(rod), 0, ROD * Math.sin(rod)),
                profile(arm),
                materials.of(arm.material(), "mount.arm.material"));
    }

    private double aside(Arm arm) {
        return values.take(arm.padOffset(), "mount.arm.pad_offset", MountDefaults.PAD_OFFSET);
    }

    private Profile profile(Arm arm) {
        return new ResolveBars(values, materials, List.of()).profile(arm.profile());
    }

    private static Place from(Place pivot, double forward, double left, double up) {
        return new Place(pivot.x() + forward, pivot.y() + left, pivot.z() + up);
    }
}
