package org.brakewright.model.parking;

import static org.brakewright.quantity.Dimension.RATIO;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Kind;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/** A lever and strut in the drum that spread the same shoes as the wheel cylinder does, as written. */
@Kind("service_shoes")
public record ServiceShoes(
        @Asked(
                label = "ratio of the lever at the shoes",
                dimension = RATIO,
                least = 1.0,
                most = 15.0,
                why = "levers in drums lie within this")
        @Required("Pivot to cable hook, divided by pivot to strut, drum off.")
        Given shoeLeverRatio,

        @Asked(
                label = "brake factor when rolling backward",
                dimension = RATIO,
                least = 0.3,
                most = 10.0,
                why = "a factor above 10 is at the edge of locking by itself",
                how = "Off a part sheet; it follows by itself when shoe_geometry is given.")
        @Nullable
        Given reverseFactor)
        implements ParkedBrake {}
