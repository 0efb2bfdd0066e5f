package org.brakewright.model.heat;

import static org.brakewright.quantity.Dimension.ACCELERATION;
import static org.brakewright.quantity.Dimension.SPEED;
import static org.brakewright.quantity.Dimension.TIME;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Required;

/** One application of the brakes, as written. */
public record BrakingEvent(
        @Asked(
                label = "start",
                dimension = TIME,
                least = 0.0,
                most = 36000.0,
                why = "it counts from the start of the schedule or the lap")
        @Required("When the brakes go on.")
        Given start,

        @Asked(
                label = "speed at the start",
                dimension = SPEED,
                least = 1.0,
                most = 140.0,
                why = "it is a speed of this car")
        @Required("The speed when the brakes go on.")
        Given fromSpeed,

        @Asked(
                label = "speed at the end",
                dimension = SPEED,
                least = 0.0,
                most = 140.0,
                why = "it is a speed of this car")
        @Required("The speed when they come off.")
        Given toSpeed,

        @Asked(
                label = "deceleration",
                dimension = ACCELERATION,
                least = 0.3,
                most = 20.0,
                why = "it is what brakes and tyres give")
        @Required("How hard the car is braked.")
        Given deceleration) {}
