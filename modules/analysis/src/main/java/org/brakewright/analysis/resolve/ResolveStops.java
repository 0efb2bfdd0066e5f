package org.brakewright.analysis.resolve;

import static org.brakewright.analysis.resolve.Default.estimate;
import static org.brakewright.analysis.resolve.Default.practice;

import java.util.Optional;
import org.brakewright.model.Given;
import org.brakewright.model.Tag;
import org.brakewright.model.resolved.ResolvedStops;
import org.brakewright.model.stop.Pitch;
import org.brakewright.model.stop.Stops;
import org.jspecify.annotations.Nullable;

/** Completes what the stops that are followed over time need. */
final class ResolveStops {
    private static final Default SPEED =
            new Default(100 / 3.6, 80 / 3.6, 160 / 3.6, "service test of UN R13-H and FMVSS 135", Tag.FROM_MEMORY);
    private static final Default RISE =
            estimate(0.3, 0.1, 0.6, "a driver who means it; a rule allows 0.6 s of build-up");
    private static final Default SLIPPERY = estimate(0.5, 0.3, 0.6, "road tyres on wet asphalt");
    private static final Default PEAK_SLIP = practice(0.10, 0.06, 0.18, "tyres hold most at about a tenth of slip");
    private static final Default SLIDING_SHARE =
            practice(0.80, 0.65, 0.92, "a locked wheel loses a fifth on dry road, more on wet");

    /** Mass of a road wheel with tyre and disc, kg. */
    private static final double WHEEL_MASS = 20;

    private static final double RIM_SHARE = 0.8;
    private static final double LIGHT = 0.6;
    private static final double HEAVY = 1.8;

    private final Values values;

    ResolveStops(Values values) {
        this.values = values;
    }

    /** What the stops need; empty when the build asks for none. */
    Optional<ResolvedStops> stops(@Nullable Stops stops, double frontTyreRadius, double rearTyreRadius) {
        return stops == null ? Optional.empty() : Optional.of(asked(stops, frontTyreRadius, rearTyreRadius));
    }

    private ResolvedStops asked(Stops stops, double frontTyreRadius, double rearTyreRadius) {
        return new ResolvedStops(
                take(stops.speed(), "speed", SPEED),
                take(stops.rise(), "rise", RISE),
                take(stops.slipperyGrip(), "slippery_grip", SLIPPERY),
                take(stops.peakSlip(), "peak_slip", PEAK_SLIP),
                take(stops.slidingShare(), "sliding_share", SLIDING_SHARE),
                take(stops.frontWheelInertia(), "front_wheel_inertia", wheel(frontTyreRadius)),
                take(stops.rearWheelInertia(), "rear_wheel_inertia", wheel(rearTyreRadius)),
                Optional.ofNullable(stops.pitch()).map(this::pitch));
    }

    private ResolvedStops.Pitch pitch(Pitch pitch) {
        return new ResolvedStops.Pitch(values.need(pitch.period()), values.need(pitch.damping()));
    }

    private double take(@Nullable Given given, String key, Default assumed) {
        return values.take(given, "stops." + key, assumed);
    }

    private static Default wheel(double radius) {
        double inertia = RIM_SHARE * WHEEL_MASS * radius * radius;
        return estimate(
                inertia,
                LIGHT * inertia,
                HEAVY * inertia,
                "a wheel of 20 kg with 0.8 of its mass times its radius squared");
    }
}
