package org.brakewright.model.parking;

import static org.brakewright.quantity.Dimension.LENGTH;
import static org.brakewright.quantity.Dimension.RATIO;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Kind;
import org.brakewright.model.Label;
import org.brakewright.model.Required;
import org.brakewright.model.brake.ShoeArrangement;
import org.brakewright.model.brake.ShoeGeometry;
import org.jspecify.annotations.Nullable;

/** Shoes of its own in a small drum in the bell of the disc, as written. */
@Kind("drum_in_disc")
public record DrumInDisc(
        @Label(
                value = "shoe arrangement",
                how = "Leading and trailing shoes share a fixed abutment; self-energising shoes push each other round.")
        @Required("leading_trailing, two_leading or self_energising: look at what the lower shoe ends rest on.")
        ShoeArrangement shoes,

        @Asked(
                label = "drum radius",
                dimension = LENGTH,
                least = 0.05,
                most = 0.2,
                why = "it is half the inside diameter of the drum in the disc")
        @Required("Half the inside diameter of the drum in the disc.")
        Given drumRadius,

        @Asked(
                label = "ratio of the lever at the shoes",
                dimension = RATIO,
                least = 1.0,
                most = 15.0,
                why = "levers in drums lie within this")
        @Required("Pivot to cable hook, divided by pivot to shoe, disc off.")
        Given shoeLeverRatio,

        @Asked(
                label = "brake factor",
                dimension = RATIO,
                least = 0.3,
                most = 10.0,
                why = "a factor above 10 is at the edge of locking by itself",
                how = "Off a part sheet; or measure the shoes and give shoe_geometry instead.")
        @Nullable
        Given brakeFactor,

        @Asked(
                label = "brake factor when rolling backward",
                dimension = RATIO,
                least = 0.3,
                most = 10.0,
                why = "a factor above 10 is at the edge of locking by itself",
                how = "Off a part sheet; it follows by itself when shoe_geometry is given.")
        @Nullable
        Given reverseFactor,

        @Label(
                value = "shoe geometry",
                how =
                        "Instead of the brake factor: where pivots, lever and linings lie; for the wheel cylinder read the lever.")
        @Nullable
        ShoeGeometry shoeGeometry,

        @Asked(
                label = "lining friction",
                dimension = RATIO,
                least = 0.05,
                most = 0.9,
                why = "no lining is outside this, hot or wet",
                how = "Off the lining's sheet or edge code; it works through the shoe geometry.")
        @Nullable
        Given liningFriction)
        implements ParkedBrake {}
