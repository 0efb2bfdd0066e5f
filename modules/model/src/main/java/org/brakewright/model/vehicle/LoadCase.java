package org.brakewright.model.vehicle;

import static org.brakewright.quantity.Dimension.LENGTH;
import static org.brakewright.quantity.Dimension.MASS;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Label;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/** One state of load of the car, as written. */
public record LoadCase(
        @Label("name of the load case") @Required("For example: driver and half a tank.")
        String name,

        @Asked(
                label = "front axle load",
                dimension = MASS,
                least = 20.0,
                most = 5000.0,
                why = "it is what a scale under both front wheels reads")
        @Required("Put both front wheels on a weighbridge, car level, or add two wheel scales.")
        Given frontAxle,

        @Asked(
                label = "rear axle load",
                dimension = MASS,
                least = 20.0,
                most = 5000.0,
                why = "it is what a scale under both rear wheels reads")
        @Required("Put both rear wheels on a weighbridge, car level, or add two wheel scales.")
        Given rearAxle,

        @Asked(
                label = "height of the centre of gravity",
                dimension = LENGTH,
                least = 0.05,
                most = 2.0,
                why = "it lies over the ground and under the roof",
                how =
                        "Weigh one axle level and again with the other axle raised, or leave it out and see what it moves.")
        @Nullable
        Given cgHeight,

        @Label(
                value = "axle-lift measurement",
                how = "Instead of the height: weigh one axle with the other one raised, suspension locked, tyres hard.")
        @Nullable
        AxleLift axleLift) {}
