package org.brakewright.model.lines;

import org.brakewright.model.Kind;
import org.brakewright.model.Label;
import org.brakewright.model.Required;

/** A box that stands along the car. */
@Kind("box")
public record Box(
        @Label("name of the obstacle") @Required("Any name you know it by.")
        String name,

        @Label("what makes it matter") @Required("One of the words allowed.")
        Nearness near,

        @Label("one corner") @Required("Any corner.") Spot from,

        @Label("opposite corner") @Required("The corner farthest from the first.")
        Spot to)
        implements Obstacle {}
