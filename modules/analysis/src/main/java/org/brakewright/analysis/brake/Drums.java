package org.brakewright.analysis.brake;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.brakewright.analysis.brake.DrumResult.Where;
import org.brakewright.kernel.friction.BrakeFactor;
import org.brakewright.model.resolved.ResolvedBrake;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.resolved.ResolvedParking;
import org.brakewright.model.resolved.ResolvedShoes;
import org.jspecify.annotations.Nullable;

/** Every drum of a car: its factor, how near it is to locking by itself, and how it moves with lining friction. */
public final class Drums {
    private static final double FRICTION_STEP = 0.1;

    private Drums() {}

    /**
     * The drums of a build.
     *
     * @param frontPressure line pressure of the hard stop, Pa; null when no push gives it
     * @param rearPressure the same behind
     */
    public static List<DrumResult> of(
            ResolvedBuild build, @Nullable Double frontPressure, @Nullable Double rearPressure) {
        List<DrumResult> drums = new ArrayList<>();
        service(drums, Where.FRONT, build.front(), frontPressure);
        service(drums, Where.REAR, build.rear(), rearPressure);
        build.parking().ifPresent(parking -> own(drums, parking));
        return List.copyOf(drums);
    }

    private static void service(List<DrumResult> drums, Where where, ResolvedBrake brake, @Nullable Double pressure) {
        if (brake instanceof ResolvedBrake.Drum drum) {
            OptionalDouble push = pressure == null
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(Math.max(0, pressure - drum.thresholdPressure()) * drum.wheelCylinderArea());
            ShoeResult geometry = drum.shoes().map(shoes -> result(shoes, push)).orElse(null);
            drums.add(new DrumResult(where, drum.arrangement(), drum.brakeFactor(), geometry));
        }
    }

    private static void own(List<DrumResult> drums, ResolvedParking parking) {
        parking.ownShoes()
                .ifPresent(shoes -> drums.add(new DrumResult(
                        Where.PARKING,
                        shoes.arrangement(),
                        parking.forwardFactor(),
                        result(shoes, OptionalDouble.empty()))));
    }

    private static ShoeResult result(ResolvedShoes shoes, OptionalDouble push) {
        ShoePair pair = ShoePair.of(shoes);
        double friction = shoes.friction();
        BrakeFactor forward = pair.forward(friction);
        Double value = value(forward);
        return new ShoeResult(
                friction,
                pair.selfLockFriction(),
                value,
                value(pair.backward(friction)),
                value(pair.forward(friction * (1 - FRICTION_STEP))),
                value(pair.forward(friction * (1 + FRICTION_STEP))),
                forward instanceof BrakeFactor.Stable stable ? stable.relativeSensitivity(friction) : null,
                orNull(pair.firstShare(friction)),
                value == null || value > ShoePair.MOST_FACTOR,
                pressure(pair, shoes, push));
    }

    private static @Nullable Double pressure(ShoePair pair, ResolvedShoes shoes, OptionalDouble push) {
        if (push.isEmpty() || shoes.liningWidth().isEmpty()) {
            return null;
        }
        return orNull(pair.liningPressure(
                push.getAsDouble(), shoes.friction(), shoes.liningWidth().getAsDouble()));
    }

    private static @Nullable Double value(BrakeFactor factor) {
        return factor instanceof BrakeFactor.Stable stable ? stable.value() : null;
    }

    private static @Nullable Double orNull(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }
}
