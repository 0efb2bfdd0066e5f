package org.brakewright.analysis.resolve;

import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.brakewright.analysis.pedal.Mechanisms;
import org.brakewright.kernel.lever.PedalRatio;
import org.brakewright.model.pedal.Linkage;
import org.brakewright.model.pedal.Pedal;
import org.brakewright.model.pedal.Pushrod;
import org.brakewright.model.resolved.ResolvedMechanism;
import org.brakewright.model.resolved.ResolvedMount;
import org.brakewright.model.resolved.ResolvedPedal;
import org.brakewright.model.resolved.ResolvedPushrod;

/** Completes a pedal. */
final class ResolvePedal {
    private static final Usual BRAKE =
            new Usual(Defaults.FREE_PLAY, Defaults.TRAVEL_TO_STOP, Defaults.PEDAL_EFFICIENCY);
    private static final Usual CLUTCH =
            new Usual(ClutchDefaults.FREE_PLAY, ClutchDefaults.TRAVEL_TO_STOP, ClutchDefaults.PEDAL_EFFICIENCY);

    private final Values values;
    private final String path;
    private final Usual usual;
    private final ResolveGiving giving;

    private ResolvePedal(Values values, String path, Usual usual, Optional<ResolvedMount> mount) {
        this.values = values;
        this.path = path;
        this.usual = usual;
        this.giving = new ResolveGiving(values, path, mount);
    }

    /** What one pedal has and the other has not. */
    private record Usual(Default freePlay, Default travelToStop, Default efficiency) {}

    static ResolvePedal brake(Values values, Optional<ResolvedMount> mount) {
        return new ResolvePedal(values, "pedal", BRAKE, mount);
    }

    static ResolvePedal clutch(Values values) {
        return new ResolvePedal(values, "clutch.pedal", CLUTCH, Optional.empty());
    }

    ResolvedPedal pedal(Pedal pedal) {
        Optional<ResolvedMechanism> mechanism =
                new ResolveMechanism(values, path + ".mechanism", path + ".ratio").mechanism(pedal);
        double ratio = ratio(pedal, mechanism);
        return new ResolvedPedal(
                ratio,
                values.take(pedal.freePlay(), path + ".free_play", usual.freePlay()),
                values.take(pedal.travelToStop(), path + ".travel_to_stop", usual.travelToStop()),
                values.take(pedal.efficiency(), path + ".efficiency", usual.efficiency()),
                giving.mount(pedal, ratio),
                giving.arm(pedal),
                values.take(pedal.slack(), path + ".slack", Defaults.SLACK),
                mechanism,
                Optional.ofNullable(pedal.pushrod()).map(this::pushrod));
    }

    private ResolvedPushrod pushrod(Pushrod rod) {
        return new ResolvedPushrod(
                values.need(rod.threadDiameter()),
                values.need(rod.threadPitch()),
                values.need(rod.clevisLength()),
                values.need(rod.clevisThread()),
                values.need(rod.jamNut()));
    }

    private double ratio(Pedal pedal, Optional<ResolvedMechanism> mechanism) {
        long given = Stream.of(pedal.ratio(), pedal.linkage(), pedal.mechanism())
                .filter(Objects::nonNull)
                .count();
        if (given != 1) {
            values.problem(
                    path + ".ratio",
                    pedal.ratio() == null ? "" : pedal.ratio().quantity().written(),
                    given == 0
                            ? "Neither the pedal ratio nor the linkage or mechanism that gives it is there."
                            : "The pedal ratio is given more than once, as a value, a linkage or a mechanism.",
                    "one of ratio, linkage and mechanism");
            return 5;
        }
        if (pedal.ratio() != null) {
            return values.need(pedal.ratio());
        }
        return pedal.linkage() == null
                ? tried(mechanism.map(Mechanisms::ratioAtRest).orElse(5.0))
                : fromLinkage(pedal.linkage());
    }

    /** The ratio that is tried in place of the one that the arms give. */
    private double tried(double ratio) {
        return values.overridden(path + ".ratio")
                ? values.take(null, path + ".ratio", Default.estimate(ratio, ratio, ratio, ""))
                : ratio;
    }

    private double fromLinkage(Linkage linkage) {
        double pad = values.need(linkage.padArm());
        double rod = values.need(linkage.pushrodArm());
        if (rod >= pad) {
            values.problem(
                    path + ".linkage.pushrod_arm",
                    linkage.pushrodArm().quantity().written(),
                    "The pushrod pin is not nearer to the pivot than the pad, so the pedal would weaken the foot.",
                    "less than pad_arm, " + linkage.padArm().quantity().written());
            return 5;
        }
        double angle = values.take(linkage.pushrodAngle(), path + ".linkage.pushrod_angle", Defaults.PUSHROD_ANGLE);
        return tried(PedalRatio.fromArms(pad, rod * Math.cos(angle)));
    }
}
