package org.brakewright.model.shop;

import static org.brakewright.quantity.Dimension.ANGLE;
import static org.brakewright.quantity.Dimension.LENGTH;

import java.util.List;
import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Label;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/** A strip of sheet folded across its width. */
public record FoldedPart(
        @Label("name of the part") @Required("Any name you know it by.")
        String name,

        @Asked(
                label = "thickness",
                dimension = LENGTH,
                least = 0.0003,
                most = 0.012,
                why = "thinner sheet is foil and thicker plate is not folded in a shop")
        @Required("With a caliper at a clean edge.")
        Given thickness,

        @Asked(
                label = "width of the strip",
                dimension = LENGTH,
                least = 0.005,
                most = 1.5,
                why = "parts of a car lie within this")
        @Required("Along the bends.")
        Given width,

        @Asked(
                label = "inside radius of its bends",
                dimension = LENGTH,
                least = 0.0001,
                most = 0.1,
                why = "a folding tool has a nose within this")
        @Required(
                "The radius of the tool's nose; soft steel takes about its thickness, hard aluminium several times that.")
        Given insideRadius,

        @Asked(
                label = "legs, to the outside corners",
                dimension = LENGTH,
                least = 0.003,
                most = 2.0,
                why = "legs of parts lie within this")
        @Required("One after the other, each measured outside from corner to corner: [40 mm, 120 mm, 40 mm].")
        List<Given> legs,

        @Asked(
                label = "bends between the legs",
                dimension = ANGLE,
                least = -2.8,
                most = 2.8,
                why = "a fold beyond 160 degrees is a hem")
        @Required("One less than the legs, from flat: plus is up, minus is down; [90 deg, 90 deg] makes a channel.")
        List<Given> bends,

        @Label(value = "holes", how = "Drilled before the part is folded.") @Nullable
        List<LegHole> holes) {}
