package org.brakewright.kernel.fatigue;

import java.util.List;
import org.hipparchus.special.Erf;

/**
 * Cycles to the crack against stress range: two straight lines on logarithmic scales, with a spread about them.
 *
 * <p>The curve is the characteristic one, two standard deviations below the mean: 97.7 of 100 details outlive it. The
 * second line goes on without an end; standards cut it off near 1e8 cycles, so this is the safe side.
 *
 * <p>Maintainer's notes. Form: EN 1993-1-9, section 7.1. Spread: log10 of the life is taken as normal with one standard
 * deviation on both lines, so a chance of survival moves the whole curve along the cycles; so does DNV-RP-C203, with
 * 0.20 (both from memory). Sums by the rule of Palmgren and Miner.
 *
 * @param range that is stood {@link #REFERENCE_CYCLES} times, Pa
 * @param slope of the first line, the power of the range
 * @param kneeCycles where the second line begins
 * @param slopeBeyond of the second line
 * @param spread standard deviation of log10 of the life
 */
public record EnduranceCurve(double range, double slope, double kneeCycles, double slopeBeyond, double spread) {
    /** Cycles at which details are classed. */
    public static final double REFERENCE_CYCLES = 2e6;

    /** Standard deviation of log10 of the life, DNV-RP-C203 (from memory). */
    public static final double USUAL_SPREAD = 0.20;

    /** Standard deviations from the mean to the characteristic curve. */
    private static final double BELOW_MEAN = 2;

    public EnduranceCurve {
        Require.positive("range", range);
        Require.positive("slope", slope);
        Require.that(
                kneeCycles >= REFERENCE_CYCLES && Double.isFinite(kneeCycles),
                "kneeCycles",
                kneeCycles,
                "must be finite and not below the reference cycles");
        Require.that(
                slopeBeyond >= slope && Double.isFinite(slopeBeyond),
                "slopeBeyond",
                slopeBeyond,
                "must be finite and not below the first slope");
        Require.positive("spread", spread);
    }

    /** The range at the knee, Pa. */
    public double kneeRange() {
        return range * Math.pow(REFERENCE_CYCLES / kneeCycles, 1 / slope);
    }

    /** Cycles that 97.7 of 100 details outlive; endless for no range. */
    public double cycles(double stressRange) {
        Require.that(stressRange >= 0, "stressRange", stressRange, "must not be below zero");
        double power = stressRange >= kneeRange() ? slope : slopeBeyond;
        return kneeCycles * Math.pow(kneeRange() / stressRange, power);
    }

    /** Cycles that a share of details outlives. */
    public double cycles(double stressRange, double survival) {
        return cycles(stressRange) * longer(survival);
    }

    /** The range that a share of details stands so many times, Pa. */
    public double rangeFor(double cycles, double survival) {
        Require.positive("cycles", cycles);
        double characteristic = cycles / longer(survival);
        double power = characteristic <= kneeCycles ? slope : slopeBeyond;
        return kneeRange() * Math.pow(kneeCycles / characteristic, 1 / power);
    }

    /** How much of the characteristic life the cycles use up; 1 is all of it. */
    public double damage(List<StressCycles> cycles) {
        return cycles.stream()
                .mapToDouble(some -> some.count() / cycles(some.range()))
                .sum();
    }

    /** The share of details that outlives the cycles, 0 to 1. */
    public double survival(List<StressCycles> cycles) {
        double deviations = BELOW_MEAN - Math.log10(damage(cycles)) / spread;
        return Erf.erfc(-deviations / Math.sqrt(2)) / 2;
    }

    /**
     * How often the cycles, taken together, can come before a crack in all but a share of details.
     *
     * @param together what one stop, one lap, one year asks of the detail
     */
    public double repeats(List<StressCycles> together, double survival) {
        return longer(survival) / damage(together);
    }

    /** Life at a chance of survival over the characteristic life. */
    private double longer(double survival) {
        Require.that(survival > 0 && survival < 1, "survival", survival, "must lie between 0 and 1");
        double deviations = Math.sqrt(2) * Erf.erfInv(2 * survival - 1);
        return Math.pow(10, (BELOW_MEAN - deviations) * spread);
    }
}
