package org.brakewright.model.heat;

import static org.brakewright.quantity.Dimension.ACCELERATION;
import static org.brakewright.quantity.Dimension.SPEED;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Kind;
import org.brakewright.model.Label;
import org.brakewright.model.Required;

/** One stop to standstill. */
@Kind("single_stop")
public record SingleStop(
        @Label("name of the schedule") @Required("Any name you know it by.")
        String name,

        @Asked(
                label = "speed at the start",
                dimension = SPEED,
                least = 1.0,
                most = 140.0,
                why = "it is a speed of this car")
        @Required("The speed from which it is braked.")
        Given fromSpeed,

        @Asked(
                label = "deceleration",
                dimension = ACCELERATION,
                least = 0.3,
                most = 20.0,
                why = "it is what brakes and tyres give")
        @Required("How hard the car is braked.")
        Given deceleration)
        implements Schedule {}
