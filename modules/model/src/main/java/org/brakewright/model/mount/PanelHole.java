package org.brakewright.model.mount;

import static org.brakewright.quantity.Dimension.LENGTH;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Required;

/** A round hole in the panel. */
public record PanelHole(
        @Asked(
                label = "middle to the left of the zero",
                dimension = LENGTH,
                least = -2.0,
                most = 2.0,
                why = "a pedal's mount lies within 2 m of its zero")
        @Required("Along the panel toward the car's left; minus to the right.")
        Given across,

        @Asked(
                label = "middle up the panel from the zero",
                dimension = LENGTH,
                least = -2.0,
                most = 2.0,
                why = "a pedal's mount lies within 2 m of its zero")
        @Required("Along the panel; minus below.")
        Given up,

        @Asked(
                label = "diameter",
                dimension = LENGTH,
                least = 0.003,
                most = 0.5,
                why = "smaller holes do not weaken a panel and larger ones leave none")
        @Required("With a caliper.")
        Given diameter) {}
