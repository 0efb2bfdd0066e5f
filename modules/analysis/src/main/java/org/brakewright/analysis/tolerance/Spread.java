package org.brakewright.analysis.tolerance;

import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * How far one result spreads over cars built like this.
 *
 * @param measure what is measured
 * @param loadCase name of the load case; null for the hard stop of the heaviest one
 * @param nominal of the car as it stands, SI; null when it has none
 * @param band over the cars that have a value, SI; null when none has
 * @param withoutValue share of the usable cars without a value
 * @param limit the builder's limit, or for the front share the one that uses both axles alike, of the car as it stands, SI; null when there is none
 * @param beyondLimit share of the cars with a value that lie above the limit, or whose front share lies below their own; null without a limit
 * @param owners inputs that own the variance, largest first
 * @param together share owned by the others and by several inputs together
 */
public record Spread(
        Measure measure,
        @Nullable String loadCase,
        @Nullable Double nominal,
        @Nullable Quantiles band,
        double withoutValue,
        @Nullable Double limit,
        @Nullable Double beyondLimit,
        List<Owner> owners,
        double together) {

    /** What spreads. */
    public enum Measure {
        /** Pedal effort of the hard stop, N; without a value when no push gives it. */
        EFFORT,
        /** Pedal travel of the hard stop, m; without a value when no push gives it. */
        TRAVEL,
        /** Front share of the brake force at the hard stop; without a value when no push gives it. */
        FRONT_SHARE,
        /** Deceleration from which the rear comes first, g; without a value when the front always does. */
        CRITICAL_DECELERATION
    }

    /**
     * Where the cars lie; the least and the most are not told, they say more about the number of samples.
     *
     * @param p05 one car in twenty is below, SI
     * @param p25 one car in four is below, SI
     * @param p50 half the cars are below, SI
     * @param p75 three cars in four are below, SI
     * @param p95 nineteen cars in twenty are below, SI
     */
    public record Quantiles(double p05, double p25, double p50, double p75, double p95) {}

    /**
     * What is asked of all cars.
     *
     * @param measure what is measured
     * @param loadCase name of the load case; null for the hard stop
     * @param nominal of the car as it stands; null when it has none
     * @param limit of the car as it stands; null when there is none
     * @param beyond whether a car lies beyond its limit
     */
    record Of(
            Measure measure,
            @Nullable String loadCase,
            @Nullable Double nominal,
            @Nullable Double limit,
            Predicate<Sample> beyond) {}
}
