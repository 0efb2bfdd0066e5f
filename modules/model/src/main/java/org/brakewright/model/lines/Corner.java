package org.brakewright.model.lines;

import static org.brakewright.quantity.Dimension.LENGTH;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/** A point of a tube's route: an end, or where two straight legs would cross if the bend between them were sharp. */
public record Corner(
        @Asked(
                label = "forward",
                dimension = LENGTH,
                least = -8.0,
                most = 8.0,
                why = "a car lies within 8 m of its zero")
        @Required("Level, toward the nose, from the zero that you chose for all lines; minus toward the tail.")
        Given forward,

        @Asked(label = "left", dimension = LENGTH, least = -3.0, most = 3.0, why = "a car lies within 3 m of its zero")
        @Required("Level, toward the car's left from the same zero; minus to the right.")
        Given left,

        @Asked(label = "up", dimension = LENGTH, least = -3.0, most = 3.0, why = "a car lies within 3 m of its zero")
        @Required("Plumb, above the same zero; minus below.")
        Given up,

        @Asked(
                label = "bend radius",
                dimension = LENGTH,
                least = 0.005,
                most = 1.0,
                why = "brake tube is bent within this",
                how = "To the middle of the tube; leave out for the bender's own.")
        @Nullable
        Given bendRadius) {}
