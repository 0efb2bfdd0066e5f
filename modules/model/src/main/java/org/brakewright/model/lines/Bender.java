package org.brakewright.model.lines;

import static org.brakewright.quantity.Dimension.LENGTH;
import static org.brakewright.quantity.Dimension.RATIO;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/** The tool that bends the tubes. */
public record Bender(
        @Asked(
                label = "radius to the middle of the tube",
                dimension = LENGTH,
                least = 0.005,
                most = 0.2,
                why = "benders for brake tube lie within this")
        @Required("Half the width of a half circle it bends, outside to outside, less half the tube.")
        Given radius,

        @Asked(
                label = "straight it holds before the first bend",
                dimension = LENGTH,
                least = 0.0,
                most = 0.3,
                why = "hand benders hold less",
                how = "From the end of the tube to where a bend can begin at the earliest.")
        @Nullable
        Given firstGrip,

        @Asked(
                label = "straight it needs between bends",
                dimension = LENGTH,
                least = 0.0,
                most = 0.3,
                why = "hand benders need less",
                how = "Between the end of one bend and the beginning of the next.")
        @Nullable
        Given between,

        @Asked(
                label = "straight it needs after the last bend",
                dimension = LENGTH,
                least = 0.0,
                most = 0.3,
                why = "hand benders need less",
                how = "What its shoe or roller pushes on.")
        @Nullable
        Given lastGrip,

        @Asked(
                label = "share of the bent angle that is left",
                dimension = RATIO,
                least = 0.7,
                most = 1.0,
                why = "brake tube opens by less",
                how = "Bend a trial piece to 90 degrees on the scale, let go, measure, and divide by 90.")
        @Nullable
        Given angleKept) {}
