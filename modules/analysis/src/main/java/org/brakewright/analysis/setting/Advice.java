package org.brakewright.analysis.setting;

import java.util.List;
import org.brakewright.model.resolved.ResolvedApply.Twin;
import org.brakewright.model.resolved.ResolvedBuild;
import org.jspecify.annotations.Nullable;

/**
 * What to set, and what other layouts would give on the same car.
 *
 * @param setting the setting of bar or valve with the largest margin; null when there is nothing to set
 * @param borePair stock bores with the largest margin; null without a bar, or when none fits
 * @param layouts the same car with other layouts, each at its own best setting; empty when no push gives the hard stop
 */
public record Advice(@Nullable Setting setting, @Nullable BorePair borePair, List<Layout> layouts) {

    /** The advice for a build; searches, so ask for it once a car. */
    public static Advice of(ResolvedBuild build) {
        Settings settings = new Settings(build);
        return new Advice(
                Settings.of(build),
                build.apply() instanceof Twin twin ? BorePairs.best(build, settings, twin) : null,
                new Layouts(build, settings).all());
    }
}
