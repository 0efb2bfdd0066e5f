package org.brakewright.model.heat;

import static org.brakewright.quantity.Dimension.SPEED;
import static org.brakewright.quantity.Dimension.TIME;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Required;

/** One point of a speed log. */
public record SpeedPoint(
        @Asked(
                label = "time",
                dimension = TIME,
                least = 0.0,
                most = 36000.0,
                why = "it counts from the start of the log")
        @Required("Since the start of the log.")
        Given time,

        @Asked(label = "speed", dimension = SPEED, least = 0.0, most = 140.0, why = "it is a speed of this car")
        @Required("Road speed at that time.")
        Given speed) {}
