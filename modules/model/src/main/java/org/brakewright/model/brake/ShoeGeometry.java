package org.brakewright.model.brake;

import static org.brakewright.quantity.Dimension.ANGLE;
import static org.brakewright.quantity.Dimension.LENGTH;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/**
 * Where the shoes of a drum stand, as written: measured with the drum off, from the middle of the hub.
 *
 * <p>The first shoe is the leading one, or the primary one of a self-energising brake; the other is the trailing or secondary one.
 */
public record ShoeGeometry(
        @Asked(
                label = "distance from hub middle to shoe pivot",
                dimension = LENGTH,
                least = 0.03,
                most = 0.3,
                why = "the pivot lies inside the drum",
                how =
                        "Self-energising shoes have no fixed pivot: measure to where the first shoe rests in the floating adjuster.")
        @Required("Drum off, measure from the middle of the hub to the pin or abutment on which the first shoe rests.")
        Given pivotDistance,

        @Asked(
                label = "distance from shoe pivot to wheel cylinder line",
                dimension = LENGTH,
                least = 0.03,
                most = 0.6,
                why = "both lie inside the drum")
        @Required(
                "Measure from that pin, abutment or floating adjuster to the middle line of the wheel cylinder that pushes the shoe, square to the line.")
        Given actuationArm,

        @Asked(
                label = "start of the first shoe's lining",
                dimension = ANGLE,
                least = 0.0,
                most = Math.PI,
                why = "a lining lies within half a turn from its pivot",
                how = "Arc along the drum divided by drum radius, times 57.3, gives degrees.")
        @Required("Angle at the hub middle from the shoe's pivot to the near end of the lining.")
        Given liningStart,

        @Asked(
                label = "end of the first shoe's lining",
                dimension = ANGLE,
                least = 0.0,
                most = Math.PI,
                why = "a lining lies within half a turn from its pivot",
                how = "Arc along the drum divided by drum radius, times 57.3, gives degrees.")
        @Required("Angle at the hub middle from the shoe's pivot to the far end of the lining.")
        Given liningEnd,

        @Asked(
                label = "distance from hub middle to anchor",
                dimension = LENGTH,
                least = 0.03,
                most = 0.3,
                why = "the anchor lies inside the drum",
                how =
                        "Only for self-energising shoes: from the middle of the hub to the fixed anchor above the wheel cylinder.")
        @Nullable
        Given anchorDistance,

        @Asked(
                label = "start of the other shoe's lining",
                dimension = ANGLE,
                least = 0.0,
                most = Math.PI,
                why = "a lining lies within half a turn from its pivot",
                how =
                        "As for the first shoe, from the pivot of the other shoe; from the anchor when it is self-energising.")
        @Nullable
        Given otherLiningStart,

        @Asked(
                label = "end of the other shoe's lining",
                dimension = ANGLE,
                least = 0.0,
                most = Math.PI,
                why = "a lining lies within half a turn from its pivot",
                how =
                        "As for the first shoe, from the pivot of the other shoe; from the anchor when it is self-energising.")
        @Nullable
        Given otherLiningEnd,

        @Asked(
                label = "width of the lining",
                dimension = LENGTH,
                least = 0.01,
                most = 0.2,
                why = "linings of cars lie within this",
                how = "Across the lining; it only tells the greatest lining pressure.")
        @Nullable
        Given liningWidth) {}
