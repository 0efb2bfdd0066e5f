package org.brakewright.app.page;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the stops over time add to a page; counterpart of {@code ui/src/stopsContract.ts}.
 *
 * @param revision of the build file
 * @param verdict of all findings
 * @param findings all of them, with what is to be said of the stops
 * @param stopsOverTime null when none are asked for
 */
public record StopsView(
        int revision,
        PageView.Verdict verdict,
        List<PageView.Finding> findings,
        PageView.@Nullable OverTime stopsOverTime) {}
