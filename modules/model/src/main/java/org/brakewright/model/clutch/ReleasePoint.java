package org.brakewright.model.clutch;

import static org.brakewright.quantity.Dimension.FORCE;
import static org.brakewright.quantity.Dimension.LENGTH;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Required;

/** One point of the cover on a press. */
public record ReleasePoint(
        @Asked(
                label = "bearing travel",
                dimension = LENGTH,
                least = 0.0001,
                most = 0.04,
                why = "covers of cars lie within this")
        @Required("Since the bearing touched the fingers.")
        Given travel,

        @Asked(
                label = "force at the bearing",
                dimension = FORCE,
                least = 0.0,
                most = 20000.0,
                why = "covers of cars lie within this")
        @Required("On the fingers at that travel.")
        Given force) {}
