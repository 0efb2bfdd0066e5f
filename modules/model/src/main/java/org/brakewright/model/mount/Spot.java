package org.brakewright.model.mount;

import static org.brakewright.quantity.Dimension.LENGTH;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Required;

/** A point in the plane of the panel, from the zero that the builder marked on it. */
public record Spot(
        @Asked(
                label = "to the left of the zero",
                dimension = LENGTH,
                least = -2.0,
                most = 2.0,
                why = "a pedal's mount lies within 2 m of its zero")
        @Required("Along the panel toward the car's left; minus to the right.")
        Given across,

        @Asked(
                label = "up the panel from the zero",
                dimension = LENGTH,
                least = -2.0,
                most = 2.0,
                why = "a pedal's mount lies within 2 m of its zero")
        @Required("Along the panel, not plumb; minus below.")
        Given up) {}
