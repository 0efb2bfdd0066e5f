package org.brakewright.model.clutch;

import static org.brakewright.quantity.Dimension.LENGTH;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Kind;
import org.jspecify.annotations.Nullable;

/** A release bearing that stands off the fingers at rest. */
@Kind("clearance")
public record Clearance(
        @Asked(
                label = "gap between bearing and fingers, new plate",
                dimension = LENGTH,
                least = 0.0,
                most = 0.02,
                why = "more than 20 mm eats the whole stroke",
                how = "Straight edge across the fingers and over the bearing, before the gearbox goes in.")
        @Nullable
        Given gap)
        implements Bearing {}
