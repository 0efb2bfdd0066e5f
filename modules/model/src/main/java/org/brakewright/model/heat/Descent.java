package org.brakewright.model.heat;

import static org.brakewright.quantity.Dimension.LENGTH;
import static org.brakewright.quantity.Dimension.RATIO;
import static org.brakewright.quantity.Dimension.SPEED;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Kind;
import org.brakewright.model.Label;
import org.brakewright.model.Required;

/** A hill, at steady speed in gear. */
@Kind("descent")
public record Descent(
        @Label("name of the schedule") @Required("Any name you know it by.")
        String name,

        @Asked(
                label = "length of the road",
                dimension = LENGTH,
                least = 50.0,
                most = 100000.0,
                why = "it is a hill on this earth")
        @Required("Read it off a map.")
        Given length,

        @Asked(
                label = "grade",
                dimension = RATIO,
                least = 0.005,
                most = 0.4,
                why = "it is the fall over the way along the map")
        @Required("The sign at the top: 10 %.")
        Given grade,

        @Asked(
                label = "speed down the hill",
                dimension = SPEED,
                least = 1.0,
                most = 60.0,
                why = "it is held by the brakes")
        @Required("The speed you hold.")
        Given speed)
        implements Schedule {}
