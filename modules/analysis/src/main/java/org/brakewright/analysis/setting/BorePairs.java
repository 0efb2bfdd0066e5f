package org.brakewright.analysis.setting;

import org.brakewright.analysis.setting.Setting.Use;
import org.brakewright.model.resolved.ResolvedApply.Twin;
import org.brakewright.model.resolved.ResolvedBuild;
import org.jspecify.annotations.Nullable;

/** Tries every pair of stock master bores under a centred bar, so that the adjuster keeps its range on both sides. */
final class BorePairs {
    private BorePairs() {}

    /** The best pair; null when none stays within the most effort and the travel there is. */
    static @Nullable BorePair best(ResolvedBuild build, Settings settings, Twin twin) {
        BorePair best = null;
        for (double front : StockBores.masters()) {
            for (double rear : StockBores.masters()) {
                Twin pair = new Twin(
                        twin.front().withBore(front),
                        twin.rear().withBore(rear),
                        twin.bar().withOffset(0),
                        twin.valves());
                SettingMargin margin = settings.margin(pair);
                if (best == null || margin.margin() > best.margin().margin()) {
                    Use use = settings.use(pair);
                    if (use != null
                            && use.withinTravel()
                            && use.effortN() <= build.aims().mostEffort()) {
                        best = new BorePair(front, rear, margin, use);
                    }
                }
            }
        }
        return best;
    }
}
