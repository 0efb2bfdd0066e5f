package org.brakewright.app.page;

import org.jspecify.annotations.Nullable;

/** The pedal through its stroke as the page shows it; explained in {@code ui/src/mechanismContract.ts}. */
public record PedalView(
        String sentence,
        PageView.@Nullable Chart ratio,
        PageView.@Nullable Chart rodAngle,
        @Nullable Double hardStop) {}
