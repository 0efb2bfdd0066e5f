package org.brakewright.analysis.ledger;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
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
 * @param clutch of the clutch; null when none is given
 * @param heat of heat; null when no schedule was followed, and in the ledger where a value moves the car but not what heat knows of it
 */
public record Headline(
        @Nullable Double effortN,
        @Nullable Double travelM,
        @Nullable Double frontShare,
        @Nullable Double criticalDecelerationG,
        double failedDecelerationG,
        @Nullable ClutchHeadline clutch,
        @Nullable HeatHeadline heat) {

    /** The headline of an analysis. */
    public static Headline of(Analysis analysis) {
        Stream<@Nullable Double> critical = analysis.loadCases().stream().map(LoadCaseResult::criticalDecelerationG);
        return of(analysis.hardStop(), critical, analysis.failures())
                .with(ClutchHeadline.of(analysis.clutch()), HeatHeadline.of(analysis.heat()));
    }

    /** The headline of its parts; the critical decelerations are those of the load cases, null when the front always locks first. */
    static Headline of(@Nullable HardStop stop, Stream<@Nullable Double> critical, List<Failure> failures) {
        return new Headline(
                stop == null ? null : stop.point().pedalForceN(),
                stop == null ? null : stop.point().pedalTravelM(),
                stop == null ? null : stop.frontShare(),
                critical.filter(Objects::nonNull).min(Comparator.naturalOrder()).orElse(null),
                leastFailed(failures),
                null,
                null);
    }

    /** The same with the parts of clutch and heat. */
    Headline with(@Nullable ClutchHeadline clutchPart, @Nullable HeatHeadline heatPart) {
        return new Headline(
                effortN, travelM, frontShare, criticalDecelerationG, failedDecelerationG, clutchPart, heatPart);
    }

    private static double leastFailed(List<Failure> failures) {
        double least = Double.POSITIVE_INFINITY;
        for (Failure failure : failures) {
            least = Math.min(least, failure.decelerationG());
        }
        return least;
    }
}
