package org.brakewright.model.footwell;

import static org.brakewright.quantity.Dimension.LENGTH;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Label;
import org.brakewright.model.Required;
import org.brakewright.model.lines.Spot;
import org.jspecify.annotations.Nullable;

/** A pedal as the foot finds it. It swings about an axis across the car. */
public record FootPedal(
        @Asked(
                label = "breadth of the pad",
                dimension = LENGTH,
                least = 0.015,
                most = 0.25,
                why = "a foot finds nothing narrower, and nothing wider fits a footwell")
        @Required("Across the car.")
        Given breadth,

        @Asked(
                label = "height of the pad",
                dimension = LENGTH,
                least = 0.015,
                most = 0.35,
                why = "a foot finds nothing lower, and an organ pedal is no longer")
        @Required("Along the arm.")
        Given height,

        @Label(value = "pivot", how = "Left out for a brake whose mount is placed in the car.") @Nullable
        Spot pivot,

        @Label(value = "middle of the pad at rest", how = "Left out for a brake whose mount is placed in the car.")
        @Nullable
        Spot pad,

        @Asked(
                label = "travel of the pad",
                dimension = LENGTH,
                least = 0.01,
                most = 0.3,
                why = "a foot moves a pedal this far",
                how = "Only where it is not told elsewhere: the throttle's, and a clutch's without a clutch section.")
        @Nullable
        Given travel) {}
