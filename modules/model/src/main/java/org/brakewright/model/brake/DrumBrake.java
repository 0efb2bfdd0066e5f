package org.brakewright.model.brake;

import static org.brakewright.quantity.Dimension.LENGTH;
import static org.brakewright.quantity.Dimension.LENGTH_PER_PRESSURE;
import static org.brakewright.quantity.Dimension.PRESSURE;
import static org.brakewright.quantity.Dimension.RATIO;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Kind;
import org.brakewright.model.Label;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/** Drum brakes of one axle, as written: one double-ended wheel cylinder a wheel. */
@Kind("drum")
public record DrumBrake(
        @Label(
                value = "shoe arrangement",
                how = "Leading and trailing shoes share a fixed abutment; self-energising shoes push each other round.")
        @Required("leading_trailing, two_leading or self_energising: look at what the lower shoe ends rest on.")
        ShoeArrangement shoes,

        @Asked(
                label = "brake factor",
                dimension = RATIO,
                least = 0.3,
                most = 10.0,
                why = "a factor above 10 is at the edge of locking by itself",
                how = "Off a part sheet; or measure the shoes and give shoe_geometry instead.")
        @Nullable
        Given brakeFactor,

        @Label(
                value = "shoe geometry",
                how =
                        "Instead of the brake factor: where pivots, wheel cylinder and linings lie, drum off, tape in hand.")
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
        Given liningFriction,

        @Asked(
                label = "drum radius",
                dimension = LENGTH,
                least = 0.06,
                most = 0.3,
                why = "it is half the inside diameter of the drum")
        @Required("Half the inside diameter of the drum.")
        Given drumRadius,

        @Asked(
                label = "wheel cylinder bore",
                dimension = LENGTH,
                least = 0.01,
                most = 0.06,
                why = "car wheel cylinders lie within this")
        @Required("The bore cast or stamped on the wheel cylinder.")
        Given wheelCylinder,

        @Asked(
                label = "threshold pressure",
                dimension = PRESSURE,
                least = 0.0,
                most = 2.0e6,
                why = "it only overcomes the shoe springs")
        @Nullable
        Given thresholdPressure,

        @Asked(
                label = "shoe movement per wheel cylinder piston",
                dimension = LENGTH,
                least = 0.0,
                most = 0.01,
                why = "more than 10 mm pushes the piston out of its bore")
        @Nullable
        Given shoeMovement,

        @Asked(
                label = "shoe and drum give per pressure, each piston",
                dimension = LENGTH_PER_PRESSURE,
                least = 0.0,
                most = 1.0e-9,
                why = "no working drum gives by more than 1 mm per MPa")
        @Nullable
        Given shoeCompression,

        @Asked(
                label = "lining that a shoe may lose",
                dimension = LENGTH,
                least = 0.0,
                most = 0.02,
                why = "no car shoe carries more lining",
                how = "New lining less the least that the maker allows.")
        @Nullable
        Given shoeWear,

        @Label(
                value = "cup expanders in the wheel cylinders",
                how =
                        "yes when a spring with dished ends holds the cups outward: with them no residual valve is needed.")
        @Nullable
        Boolean cupExpanders,

        @Asked(
                label = "rated pressure of the wheel cylinder",
                dimension = PRESSURE,
                least = 1.0e6,
                most = 40.0e6,
                why = "ratings of car wheel cylinders lie within this",
                how = "From the part sheet.")
        @Nullable
        Given ratedPressure,

        @Asked(
                label = "brake factor, cold",
                dimension = RATIO,
                least = 0.1,
                most = 10.0,
                why = "a factor above 10 is at the edge of locking by itself",
                how = "The first stop of a cold morning.")
        @Nullable
        Given brakeFactorCold,

        @Asked(
                label = "brake factor, hot",
                dimension = RATIO,
                least = 0.1,
                most = 10.0,
                why = "a factor above 10 is at the edge of locking by itself",
                how = "As the linings fade; the factor falls faster than the lining friction.")
        @Nullable
        Given brakeFactorHot,

        @Asked(
                label = "brake factor, wet",
                dimension = RATIO,
                least = 0.1,
                most = 10.0,
                why = "a factor above 10 is at the edge of locking by itself",
                how = "With water between lining and drum, as after a ford.")
        @Nullable
        Given brakeFactorWet,

        @Asked(
                label = "lining friction, cold",
                dimension = RATIO,
                least = 0.02,
                most = 1.2,
                why = "no lining is outside this, hot or wet",
                how = "The first stop of a cold morning; it works through the shoe geometry.")
        @Nullable
        Given liningFrictionCold,

        @Asked(
                label = "lining friction, hot",
                dimension = RATIO,
                least = 0.02,
                most = 1.2,
                why = "no lining is outside this, hot or wet",
                how = "As the linings fade; the shoes amplify what they lose.")
        @Nullable
        Given liningFrictionHot,

        @Asked(
                label = "lining friction, wet",
                dimension = RATIO,
                least = 0.02,
                most = 1.2,
                why = "no lining is outside this, hot or wet",
                how = "With water between lining and drum, as after a ford.")
        @Nullable
        Given liningFrictionWet)
        implements WheelBrake {}
