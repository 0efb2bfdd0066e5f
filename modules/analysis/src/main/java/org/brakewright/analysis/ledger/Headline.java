package org.brakewright.analysis.ledger;

import java.util.List;
import org.brakewright.analysis.Analysis;
import org.brakewright.analysis.LoadCaseResult;
import org.brakewright.analysis.failure.Failure;
import org.brakewright.analysis.vehicle.HardStop;
import org.jspecify.annotations.Nullable;

/**
 * The results that a verdict stands on. Effort, travel, balance and margin are never shown apart.
 *
 * @param effortN pedal effort of the hard stop; null when no push gives it
 * @param travelM pedal travel of the hard stop; null when no push gives it
 * @param frontShare of the brake force at the hard stop; null when no push gives it
 * @param criticalDecelerationG least over the load cases; null when the front always locks first
 * @param failedDecelerationG least over the failures
 */
public record Headline(
        @Nullable Double effortN,
        @Nullable Double travelM,
        @Nullable Double frontShare,
        @Nullable Double criticalDecelerationG,
        double failedDecelerationG) {

    /** The headline of an analysis. */
    public static Headline of(Analysis analysis) {
        return of(analysis.hardStop(), leastCritical(analysis), analysis.failures());
    }

    /** The headline of its parts. */
    static Headline of(@Nullable HardStop stop, @Nullable Double criticalDecelerationG, List<Failure> failures) {
        return new Headline(
                stop == null ? null : stop.point().pedalForceN(),
                stop == null ? null : stop.point().pedalTravelM(),
                stop == null ? null : stop.frontShare(),
                criticalDecelerationG,
                leastFailed(failures));
    }

    private static @Nullable Double leastCritical(Analysis analysis) {
        Double least = null;
        for (LoadCaseResult loadCase : analysis.loadCases()) {
            Double critical = loadCase.criticalDecelerationG();
            if (critical != null && (least == null || critical < least)) {
                least = critical;
            }
        }
        return least;
    }

    private static double leastFailed(List<Failure> failures) {
        double least = Double.POSITIVE_INFINITY;
        for (Failure failure : failures) {
            least = Math.min(least, failure.decelerationG());
        }
        return least;
    }
}
