package org.brakewright.model.mount;

import static org.brakewright.quantity.Dimension.LENGTH;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Kind;
import org.brakewright.model.Required;

/** Round tube. */
@Kind("round_tube")
public record RoundTube(
        @Asked(
                label = "outside diameter",
                dimension = LENGTH,
                least = 0.003,
                most = 0.2,
                why = "bars of a mount lie within this")
        @Required("With a caliper.")
        Given diameter,

        @Asked(label = "wall", dimension = LENGTH, least = 0.0005, most = 0.02, why = "a thinner wall is foil")
        @Required("With a caliper at a cut end.")
        Given wall)
        implements Profile {}
