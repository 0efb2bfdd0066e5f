package org.brakewright.model.vehicle;

import static org.brakewright.quantity.Dimension.ACCELERATION;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Label;
import org.brakewright.model.Required;

/** What the engine holds back with the foot off, clutch engaged, as written. */
public record EngineBraking(
        @Label(value = "driven axle", how = "The axle that the engine holds back.") @Required("front or rear")
        AxleEnd drivenAxle,

        @Asked(
                label = "deceleration by the engine alone",
                dimension = ACCELERATION,
                least = 0.0,
                most = 5.0,
                why = "an engine that held back more would lock its wheels on a wet road")
        @Required(
                "Lift the foot in the gear you brake in, first load case aboard, and take off what the car loses coasting out of gear.")
        Given deceleration) {}
