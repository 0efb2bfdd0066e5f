package org.brakewright.model.mount;

import static org.brakewright.quantity.Dimension.LENGTH;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Required;

/** A point in the car, from the zero on the panel. */
public record Place(
        @Asked(
                label = "forward of the zero",
                dimension = LENGTH,
                least = -2.0,
                most = 2.0,
                why = "a pedal's mount lies within 2 m of its zero")
        @Required("Level, toward the nose; minus toward the driver.")
        Given forward,

        @Asked(
                label = "left of the zero",
                dimension = LENGTH,
                least = -2.0,
                most = 2.0,
                why = "a pedal's mount lies within 2 m of its zero")
        @Required("Toward the car's left; minus to the right.")
        Given left,

        @Asked(
                label = "above the zero",
                dimension = LENGTH,
                least = -2.0,
                most = 2.0,
                why = "a pedal's mount lies within 2 m of its zero")
        @Required("Plumb; minus below.")
        Given up) {}
