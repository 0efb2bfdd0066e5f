package org.brakewright.model.hydraulics;

import static org.brakewright.quantity.Dimension.FORCE;
import static org.brakewright.quantity.Dimension.LENGTH;
import static org.brakewright.quantity.Dimension.PRESSURE;
import static org.brakewright.quantity.Dimension.RATIO;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/** A vacuum booster as written. */
public record Booster(
        @Asked(
                label = "boost ratio",
                dimension = RATIO,
                least = 1.0,
                most = 12.0,
                why = "a booster multiplies the push, within what its reaction disc allows")
        @Required("Output over input force below run-out, from the part sheet or a gauge test.")
        Given ratio,

        @Asked(
                label = "diaphragm diameter",
                dimension = LENGTH,
                least = 0.1,
                most = 0.4,
                why = "car boosters lie within this")
        @Required(
                "Outside diameter of the shell less the rolled edge; for two diaphragms give the diameter of equal area.")
        Given diaphragmDiameter,

        @Asked(
                label = "vacuum",
                dimension = PRESSURE,
                least = 0.0,
                most = 1.0e5,
                why = "vacuum cannot exceed the atmosphere",
                how = "Gauge on the booster hose, hot engine at idle.")
        @Nullable
        Given vacuum,

        @Asked(
                label = "crack-in force",
                dimension = FORCE,
                least = 0.0,
                most = 500.0,
                why = "it only opens the booster's valve")
        @Nullable
        Given crackInForce,

        @Asked(
                label = "booster efficiency",
                dimension = RATIO,
                least = 0.5,
                most = 1.0,
                why = "springs and seals take a part of the diaphragm's force")
        @Nullable
        Given efficiency) {}
