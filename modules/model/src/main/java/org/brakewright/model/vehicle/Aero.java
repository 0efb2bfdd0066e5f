package org.brakewright.model.vehicle;

import static org.brakewright.quantity.Dimension.FORCE;
import static org.brakewright.quantity.Dimension.SPEED;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Required;

/** What the air does to the car at one speed, as written; it grows with the square of the speed. */
public record Aero(
        @Asked(
                label = "speed at which the air's forces are known",
                dimension = SPEED,
                least = 5.0,
                most = 140.0,
                why = "slower the air's forces are too small to be measured, and faster is beyond what this tool knows")
        @Required("The speed at which downforce and drag were measured or worked out.")
        Given speed,

        @Asked(
                label = "downforce on the front axle at that speed",
                dimension = FORCE,
                least = -10_000.0,
                most = 40_000.0,
                why = "no car is lifted by more than its weight, and none is pressed down by more than four tonnes")
        @Required("Load that the air adds to the front axle, drag's own pitch included; minus is lift, 0 N for none.")
        Given frontDownforce,

        @Asked(
                label = "downforce on the rear axle at that speed",
                dimension = FORCE,
                least = -10_000.0,
                most = 40_000.0,
                why = "no car is lifted by more than its weight, and none is pressed down by more than four tonnes")
        @Required("Load that the air adds to the rear axle, drag's own pitch included; minus is lift, 0 N for none.")
        Given rearDownforce,

        @Asked(
                label = "drag at that speed",
                dimension = FORCE,
                least = 0.0,
                most = 20_000.0,
                why = "drag never pushes a car, and two tonnes stop any")
        @Required("Air drag, for example from a coast-down; 0 N to leave it out.")
        Given drag) {}
