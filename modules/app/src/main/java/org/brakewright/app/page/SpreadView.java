package org.brakewright.app.page;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the page shows of a tolerance run, served apart from the page; the counterpart of {@code ui/src/spreadContract.ts}.
 *
 * @param revision of the build file that it belongs to
 * @param sentence what a builder has to know first
 * @param basis how many cars were drawn, and of what
 * @param notes what else has to be known of it
 * @param bands effort, travel and front share, then where the rear comes first in each load case
 * @param rearFirst how often the rear locks first, by grip and load case
 */
public record SpreadView(
        int revision,
        String sentence,
        String basis,
        List<String> notes,
        List<BandView> bands,
        PageView.Table rearFirst) {

    /** One result with its band; marks are null when no car has a value. */
    public record BandView(
            String key,
            String label,
            String state,
            String word,
            String sentence,
            @Nullable Marks marks,
            List<OwnerView> owners,
            @Nullable String together) {}

    /** Where the marks stand, in any unit, and what is written at them. */
    public record Marks(
            double p05,
            double p25,
            double p50,
            double p75,
            double p95,
            @Nullable Double nominal,
            @Nullable Double limit,
            MarkTexts texts) {}

    /** What is written at the marks, in the units shown. */
    public record MarkTexts(
            String p05,
            String p25,
            String p50,
            String p75,
            String p95,
            @Nullable String nominal,
            @Nullable String limit) {}

    /** An input with its share of the variance, 0 to 1. */
    public record OwnerView(String path, String title, double share, String text) {}
}
