package org.brakewright.model.vehicle;

import static org.brakewright.quantity.Dimension.LENGTH;
import static org.brakewright.quantity.Dimension.MASS;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Label;
import org.brakewright.model.Required;

/** Weighing one axle while the other is raised, which gives the height of the centre of gravity. */
public record AxleLift(
        @Label("axle that was raised") @Required("front or rear")
        AxleEnd raised,

        @Asked(
                label = "rise of the raised axle",
                dimension = LENGTH,
                least = 0.1,
                most = 2.0,
                why = "less than 100 mm drowns in the scale's error and more than 2 m is not safe")
        @Required("Height of the raised wheel centres over where they were when level.")
        Given rise,

        @Asked(
                label = "load on the lower axle while the other is raised",
                dimension = MASS,
                least = 20.0,
                most = 5000.0,
                why = "it is what the scale under the axle on the ground reads")
        @Required("Read the scale under the axle that stays on the ground.")
        Given lowerAxle) {}
