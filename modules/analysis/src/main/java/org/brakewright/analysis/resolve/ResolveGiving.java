package org.brakewright.analysis.resolve;

import java.util.Locale;
import java.util.Optional;
import org.brakewright.analysis.mount.MountStiffness;
import org.brakewright.analysis.mount.MountStiffness.Outcome;
import org.brakewright.model.Given;
import org.brakewright.model.pedal.Pedal;
import org.brakewright.model.resolved.ResolvedMount;
import org.jspecify.annotations.Nullable;

/** How far mount and arm give way at the pad: computed where the mount is told, else as given or assumed. */
final class ResolveGiving {
    /** Share by which the ratio of the drawn pedal may miss the ratio that the pedal has. */
    private static final double AGREES = 0.15;

    private final Values values;
    private final String path;
    private final Optional<ResolvedMount> mount;

    ResolveGiving(Values values, String path, Optional<ResolvedMount> mount) {
        this.values = values;
        this.path = path;
        this.mount = mount;
    }

    /** Foot force over pad movement, N/m. */
    double mount(Pedal pedal, double ratio) {
        String key = path + ".mount_stiffness";
        if (mount.isEmpty() || values.overridden(key)) {
            return values.take(pedal.mountStiffness(), key, Defaults.MOUNT_STIFFNESS);
        }
        once(key, pedal.mountStiffness());
        agree(mount.get(), ratio);
        return switch (MountStiffness.of(mount.get(), ratio)) {
            case Outcome.Stands(double stiffness) -> stiffness;
            case Outcome.Loose loose -> loose(loose);
        };
    }

    private double loose(Outcome.Loose loose) {
        values.problem(
                loose.part().isEmpty() ? "mount" : loose.part(),
                String.join(", ", loose.along()),
                "It can move without resistance: it is tied to nothing, or only so that it can swing.",
                "bolts, welds, stringers or held edges that keep it in place");
        return Defaults.MOUNT_STIFFNESS.value();
    }

    /** Foot force over pad movement, N/m. */
    double arm(Pedal pedal) {
        String key = path + ".arm_stiffness";
        if (mount.isEmpty() || values.overridden(key)) {
            return values.take(pedal.armStiffness(), key, Defaults.ARM_STIFFNESS);
        }
        once(key, pedal.armStiffness());
        return MountStiffness.arm(mount.get().pedal()).orElse(Defaults.ARM_STIFFNESS.value());
    }

    private void once(String key, @Nullable Given given) {
        if (given != null) {
            values.problem(
                    key,
                    Values.written(given),
                    "It is told twice: as a value here, and as the structure that it is computed from in mount.",
                    "keep one of both");
        }
    }

    private void agree(ResolvedMount told, double ratio) {
        double drawn = MountStiffness.drawnRatio(told.pedal());
        if (!values.anyOverridden() && !(Math.abs(drawn / ratio - 1) < AGREES)) {
            values.problem(
                    "mount.arm",
                    String.format(Locale.ROOT, "ratio %.2f", drawn),
                    String.format(
                            Locale.ROOT,
                            "Pad, pin and socket make another ratio than the pedal's, which is %.2f.",
                            ratio),
                    "points that make the pedal's ratio");
        }
    }
}
