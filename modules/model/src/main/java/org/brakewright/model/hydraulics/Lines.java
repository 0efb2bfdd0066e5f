package org.brakewright.model.hydraulics;

import org.brakewright.model.Label;
import org.jspecify.annotations.Nullable;

/** Tubes and hoses of both circuits, as written. */
public record Lines(
        @Label("front circuit") @Nullable Line front,
        @Label("rear circuit") @Nullable Line rear) {}
