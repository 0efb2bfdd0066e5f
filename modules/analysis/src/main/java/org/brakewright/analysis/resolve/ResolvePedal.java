package org.brakewright.analysis.resolve;

import org.brakewright.kernel.lever.PedalRatio;
import org.brakewright.model.pedal.Linkage;
import org.brakewright.model.pedal.Pedal;
import org.brakewright.model.resolved.ResolvedPedal;

/** Completes the pedal. */
final class ResolvePedal {
    private static final String RATIO = "pedal.ratio";

    private final Values values;

    ResolvePedal(Values values) {
        this.values = values;
    }

    ResolvedPedal pedal(Pedal pedal) {
        return new ResolvedPedal(
                ratio(pedal),
                values.take(pedal.freePlay(), "pedal.free_play", Defaults.FREE_PLAY),
                values.take(pedal.travelToStop(), "pedal.travel_to_stop", Defaults.TRAVEL_TO_STOP),
                values.take(pedal.efficiency(), "pedal.efficiency", Defaults.PEDAL_EFFICIENCY),
                values.take(pedal.mountStiffness(), "pedal.mount_stiffness", Defaults.MOUNT_STIFFNESS));
    }

    private double ratio(Pedal pedal) {
        Linkage linkage = pedal.linkage();
        if (pedal.ratio() != null && linkage == null) {
            return values.need(pedal.ratio());
        }
        if (pedal.ratio() == null && linkage != null) {
            return fromLinkage(linkage);
        }
        values.problem(
                RATIO,
                pedal.ratio() == null ? "" : pedal.ratio().quantity().written(),
                pedal.ratio() == null
                        ? "Neither the pedal ratio nor the linkage that gives it is there."
                        : "The pedal ratio is given twice, as a value and as a linkage.",
                "one of ratio and linkage");
        return 5;
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
        double ratio = PedalRatio.fromArms(pad, rod * Math.cos(angle));
        return values.overridden(RATIO) ? values.take(null, RATIO, Default.estimate(ratio, ratio, ratio, "")) : ratio;
    }
}
