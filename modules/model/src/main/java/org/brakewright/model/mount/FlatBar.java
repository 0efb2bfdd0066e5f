package org.brakewright.model.mount;

import static org.brakewright.quantity.Dimension.LENGTH;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Kind;
import org.brakewright.model.Required;

/** Flat bar; its height stands up, or forward on a bar that stands. */
@Kind("flat_bar")
public record FlatBar(
        @Asked(label = "width", dimension = LENGTH, least = 0.003, most = 0.2, why = "bars of a mount lie within this")
        @Required("With a caliper.")
        Given width,

        @Asked(label = "height", dimension = LENGTH, least = 0.003, most = 0.2, why = "bars of a mount lie within this")
        @Required("With a caliper.")
        Given height)
        implements Profile {}
