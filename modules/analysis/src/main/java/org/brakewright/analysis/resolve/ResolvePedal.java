package org.brakewright.analysis.resolve;

import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.brakewright.analysis.pedal.Mechanisms;
import org.brakewright.kernel.lever.PedalRatio;
import org.brakewright.model.pedal.Linkage;
import org.brakewright.model.pedal.Pedal;
import org.brakewright.model.resolved.ResolvedMechanism;
import org.brakewright.model.resolved.ResolvedPedal;

/** Completes the pedal. */
final class ResolvePedal {
    private static final String RATIO = "pedal.ratio";

    private final Values values;

    ResolvePedal(Values values) {
        this.values = values;
    }

    ResolvedPedal pedal(Pedal pedal) {
        Optional<ResolvedMechanism> mechanism = new ResolveMechanism(values).mechanism(pedal);
        return new ResolvedPedal(
                ratio(pedal, mechanism),
                values.take(pedal.freePlay(), "pedal.free_play", Defaults.FREE_PLAY),
                values.take(pedal.travelToStop(), "pedal.travel_to_stop", Defaults.TRAVEL_TO_STOP),
                values.take(pedal.efficiency(), "pedal.efficiency", Defaults.PEDAL_EFFICIENCY),
                values.take(pedal.mountStiffness(), "pedal.mount_stiffness", Defaults.MOUNT_STIFFNESS),
                values.take(pedal.armStiffness(), "pedal.arm_stiffness", Defaults.ARM_STIFFNESS),
                values.take(pedal.slack(), "pedal.slack", Defaults.SLACK),
                mechanism);
    }

    private double ratio(Pedal pedal, Optional<ResolvedMechanism> mechanism) {
        long given = Stream.of(pedal.ratio(), pedal.linkage(), pedal.mechanism())
                .filter(Objects::nonNull)
                .count();
        if (given != 1) {
            values.problem(
                    RATIO,
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
        return values.overridden(RATIO) ? values.take(null, RATIO, Default.estimate(ratio, ratio, ratio, "")) : ratio;
    }

    private double fromLinkage(Linkage linkage) {
        double pad = values.need(linkage.padArm());
        double rod = values.need(linkage.pushrodArm());
        if (rod >= pad) {
            values.problem(
                    "pedal.linkage.pushrod_arm",
                    linkage.pushrodArm().quantity().written(),
                    "The pushrod pin is not nearer to the pivot than the pad, so the pedal would weaken the foot.",
                    "less than pad_arm, " + linkage.padArm().quantity().written());
            return 5;
        }
        double angle = values.take(linkage.pushrodAngle(), "pedal.linkage.pushrod_angle", Defaults.PUSHROD_ANGLE);
        return tried(PedalRatio.fromArms(pad, rod * Math.cos(angle)));
    }
}
