package org.brakewright.model.clutch;

import static org.brakewright.quantity.Dimension.LENGTH;
import static org.brakewright.quantity.Dimension.RATIO;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/** The clutch plate, as written. */
public record Plate(
        @Asked(
                label = "outside diameter of the facings",
                dimension = LENGTH,
                least = 0.08,
                most = 0.5,
                why = "facings of cars lie within this")
        @Required("Across the facing.")
        Given outerDiameter,

        @Asked(
                label = "inside diameter of the facings",
                dimension = LENGTH,
                least = 0.04,
                most = 0.45,
                why = "facings of cars lie within this")
        @Required("Across the hole of the facing.")
        Given innerDiameter,

        @Asked(
                label = "friction of the facings",
                dimension = RATIO,
                least = 0.05,
                most = 0.8,
                why = "no facing is outside this",
                how = "From the facing's sheet.")
        @Nullable
        Given friction,

        @Asked(
                label = "faces that rub",
                dimension = RATIO,
                least = 2.0,
                most = 12.0,
                why = "one plate rubs on two faces, each further plate on two more")
        @Nullable
        Given faces,

        @Asked(
                label = "wear allowed, both faces together",
                dimension = LENGTH,
                least = 0.0,
                most = 0.01,
                why = "more than 10 mm is not on a plate",
                how = "Thickness new less thickness at the rivets.")
        @Nullable
        Given wear,

        @Asked(
                label = "travel of the cushion between the facings",
                dimension = LENGTH,
                least = 0.0001,
                most = 0.003,
                why = "cushions lie within this",
                how = "Thickness free less thickness clamped.")
        @Nullable
        Given cushionTravel,

        @Asked(
                label = "clear gap for shifting, all faces together",
                dimension = LENGTH,
                least = 0.0001,
                most = 0.005,
                why = "plates run free within this")
        @Nullable
        Given clearance) {}
