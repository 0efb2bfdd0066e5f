package org.brakewright.model.lines;

import static org.brakewright.quantity.Dimension.LENGTH;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Kind;
import org.brakewright.model.Label;
import org.brakewright.model.Required;

/** A cylinder: a column, a shaft, an exhaust pipe, a wheel. */
@Kind("cylinder")
public record RoundBar(
        @Label("name of the obstacle") @Required("Any name you know it by.")
        String name,

        @Label("what makes it matter") @Required("One of the words allowed.")
        Nearness near,

        @Label("one end of its axis") @Required("The middle of one end.")
        Spot from,

        @Label("other end of its axis") @Required("The middle of the other end.")
        Spot to,

        @Asked(
                label = "radius of the envelope",
                dimension = LENGTH,
                least = 0.001,
                most = 1.0,
                why = "parts of cars lie within this")
        @Required("Of all the room it takes when it moves.")
        Given radius)
        implements Obstacle {}
