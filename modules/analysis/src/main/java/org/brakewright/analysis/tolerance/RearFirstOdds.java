package org.brakewright.analysis.tolerance;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.tolerance.Sample.First;
import org.brakewright.kernel.statistics.Odds;
import org.jspecify.annotations.Nullable;

/**
 * How likely the rear wheels of a load case lock first.
 *
 * @param loadCase its name
 * @param atGrip one row a grip, rising, and at last one at the car's own grip
 */
public record RearFirstOdds(String loadCase, List<AtGrip> atGrip) {
    /** Grips of the table. */
    static final double[] GRIPS = {0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1.0, 1.1, 1.2};

    /**
     * The odds at one grip.
     *
     * @param grip tyre grip; null for the car's own grip, which may vary from car to car
     * @param rearFirst share of the cars whose rear locks first
     * @param standardError of that share
     * @param nothingLocks share of the cars whose wheels no push locks
     */
    public record AtGrip(@Nullable Double grip, double rearFirst, double standardError, double nothingLocks) {}

    static RearFirstOdds of(String loadCase, int number, List<Sample> samples) {
        List<AtGrip> rows = new ArrayList<>();
        for (int row = 0; !samples.isEmpty() && row <= GRIPS.length; row++) {
            Odds rear = odds(samples, number, row, First.REAR);
            rows.add(new AtGrip(
                    row < GRIPS.length ? GRIPS[row] : null,
                    rear.probability(),
                    rear.standardError(),
                    odds(samples, number, row, First.NONE).probability()));
        }
        return new RearFirstOdds(loadCase, List.copyOf(rows));
    }

    private static Odds odds(List<Sample> samples, int number, int row, First first) {
        long count = samples.stream()
                .filter(sample -> sample.cases().get(number).first().get(row) == first)
                .count();
        return new Odds((int) count, samples.size());
    }
}
