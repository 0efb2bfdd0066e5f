package org.brakewright.model.mount;

import static org.brakewright.quantity.Dimension.LENGTH;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Kind;
import org.brakewright.model.Required;

/** Rectangular tube; its height stands up, or forward on a bar that stands. */
@Kind("rectangular_tube")
public record RectangularTube(
        @Asked(
                label = "outside width",
                dimension = LENGTH,
                least = 0.003,
                most = 0.2,
                why = "bars of a mount lie within this")
        @Required("With a caliper.")
        Given width,

        @Asked(
                label = "outside height",
                dimension = LENGTH,
                least = 0.003,
                most = 0.2,
                why = "bars of a mount lie within this")
        @Required("With a caliper.")
        Given height,

        @Asked(label = "wall", dimension = LENGTH, least = 0.0005, most = 0.02, why = "a thinner wall is foil")
        @Required("With a caliper at a cut end.")
        Given wall)
        implements Profile {}
