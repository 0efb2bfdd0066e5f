package org.brakewright.model.hydraulics;

import static org.brakewright.quantity.Dimension.PRESSURE;
import static org.brakewright.quantity.Dimension.RATIO;
import static org.brakewright.quantity.Dimension.TEMPERATURE;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Label;
import org.jspecify.annotations.Nullable;

/** The brake fluid as written. */
public record Fluid(
        @Label(value = "fluid grade", how = "The grade on the bottle; never mix silicone with the others.") @Nullable
        FluidGrade grade,

        @Asked(
                label = "bulk modulus of the fluid",
                dimension = PRESSURE,
                least = 2.0e8,
                most = 4.0e9,
                why = "brake fluids lie within this")
        @Nullable
        Given bulkModulus,

        @Asked(
                label = "free air in the fluid, by volume at atmosphere",
                dimension = RATIO,
                least = 0.0,
                most = 0.2,
                why = "above 20 % the pedal goes to the floor and no figure helps")
        @Nullable
        Given freeAir,

        @Asked(
                label = "dry boiling point",
                dimension = TEMPERATURE,
                least = 393.15,
                most = 653.15,
                why = "brake fluids boil within this",
                how = "From the bottle; else the least of the grade is taken.")
        @Nullable
        Given dryBoilingPoint,

        @Asked(
                label = "wet boiling point",
                dimension = TEMPERATURE,
                least = 373.15,
                most = 603.15,
                why = "brake fluids with water in them boil within this",
                how = "From the bottle; else the least of the grade is taken.")
        @Nullable
        Given wetBoilingPoint) {}
