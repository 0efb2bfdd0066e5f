package org.brakewright.model.mount;

import static org.brakewright.quantity.Dimension.FORCE;
import static org.brakewright.quantity.Dimension.LENGTH;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/** A push that was measured on the car, the masters' outlets plugged so that the fluid holds the rods. */
public record Measured(
        @Asked(
                label = "force on the pad",
                dimension = FORCE,
                least = 20.0,
                most = 2000.0,
                why = "less is not read and more is not pushed by hand")
        @Required("Read on the scale between foot and pad.")
        Given force,

        @Asked(
                label = "movement of the pad",
                dimension = LENGTH,
                least = 0.00001,
                most = 0.15,
                why = "a dial gauge or a rule reads this")
        @Required("Along the push, against something that does not move with the firewall.")
        Given pad,

        @Asked(
                label = "movement of the masters' flange",
                dimension = LENGTH,
                least = 0.00001,
                most = 0.05,
                why = "a dial gauge reads this",
                how = "Along the rods, at the flange.")
        @Nullable
        Given flange) {}
