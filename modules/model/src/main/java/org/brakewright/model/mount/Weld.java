package org.brakewright.model.mount;

import static org.brakewright.quantity.Dimension.LENGTH;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Label;
import org.brakewright.model.Required;

/** A straight fillet that holds a bracket to the panel. */
public record Weld(
        @Label("where it begins") @Required("One end of the fillet, on the panel.")
        Spot from,

        @Label("where it ends") @Required("The other end.") Spot to,

        @Asked(
                label = "leg of the fillet",
                dimension = LENGTH,
                least = 0.0005,
                most = 0.012,
                why = "a fillet on sheet lies within this")
        @Required("Measure the fillet along one sheet; the throat is 0.7 of it.")
        Given leg) {}
