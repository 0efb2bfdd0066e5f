package org.brakewright.model.shop;

import static org.brakewright.quantity.Dimension.LENGTH;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Label;
import org.brakewright.model.Required;

/** A round hole in one leg of a folded part. */
public record LegHole(
        @Label(value = "leg", how = "1 for the first one.") @Required("The number of the leg it is in.")
        int leg,

        @Asked(
                label = "along the leg",
                dimension = LENGTH,
                least = 0.0,
                most = 2.0,
                why = "legs of parts lie within this")
        @Required("From the outside corner where the leg begins, or from the free end of the first leg, to the middle.")
        Given along,

        @Asked(
                label = "across the strip",
                dimension = LENGTH,
                least = 0.0,
                most = 1.5,
                why = "parts of a car lie within this")
        @Required("From one edge of the strip, the same for all holes, to the middle.")
        Given across,

        @Asked(
                label = "diameter",
                dimension = LENGTH,
                least = 0.001,
                most = 0.3,
                why = "drills and hole saws lie within this")
        @Required("The drill; a clearance hole is some 0.5 mm larger than its bolt.")
        Given diameter) {}
