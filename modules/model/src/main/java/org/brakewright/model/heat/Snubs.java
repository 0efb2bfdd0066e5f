package org.brakewright.model.heat;

import static org.brakewright.quantity.Dimension.ACCELERATION;
import static org.brakewright.quantity.Dimension.RATIO;
import static org.brakewright.quantity.Dimension.SPEED;
import static org.brakewright.quantity.Dimension.TIME;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Kind;
import org.brakewright.model.Label;
import org.brakewright.model.Required;

/** Equal snubs at equal intervals. */
@Kind("snubs")
public record Snubs(
        @Label("name of the schedule") @Required("Any name you know it by.")
        String name,

        @Asked(
                label = "speed at the start",
                dimension = SPEED,
                least = 1.0,
                most = 140.0,
                why = "it is a speed of this car")
        @Required("The speed from which each is braked.")
        Given fromSpeed,

        @Asked(
                label = "speed at the end",
                dimension = SPEED,
                least = 0.0,
                most = 140.0,
                why = "it is a speed of this car")
        @Required("The speed to which each is braked; 0 for full stops.")
        Given toSpeed,

        @Asked(
                label = "deceleration",
                dimension = ACCELERATION,
                least = 0.3,
                most = 20.0,
                why = "it is what brakes and tyres give")
        @Required("How hard the car is braked.")
        Given deceleration,

        @Asked(
                label = "number of snubs",
                dimension = RATIO,
                least = 1.0,
                most = 100.0,
                why = "it is a whole number of snubs")
        @Required("How many there are.")
        Given count,

        @Asked(
                label = "time from one snub to the next",
                dimension = TIME,
                least = 2.0,
                most = 3600.0,
                why = "it takes in the snub and the speeding up")
        @Required("From the start of one to the start of the next.")
        Given interval)
        implements Schedule {}
