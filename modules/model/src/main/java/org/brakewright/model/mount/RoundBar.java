package org.brakewright.model.mount;

import static org.brakewright.quantity.Dimension.LENGTH;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Kind;
import org.brakewright.model.Required;

/** Solid round bar. */
@Kind("round_bar")
public record RoundBar(
        @Asked(
                label = "diameter",
                dimension = LENGTH,
                least = 0.003,
                most = 0.2,
                why = "bars of a mount lie within this")
        @Required("With a caliper.")
        Given diameter)
        implements Profile {}
