package org.brakewright.model.shop;

import static org.brakewright.quantity.Dimension.ANGLE;
import static org.brakewright.quantity.Dimension.LENGTH;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Label;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/** The end of a round tube that meets the side of another. */
public record TubeJoint(
        @Label("name of the joint") @Required("Any name you know it by.")
        String name,

        @Asked(
                label = "outside diameter of the tube that is cut",
                dimension = LENGTH,
                least = 0.004,
                most = 0.15,
                why = "tubes of cars lie within this")
        @Required("With a caliper.")
        Given branchDiameter,

        @Asked(
                label = "outside diameter of the tube it meets",
                dimension = LENGTH,
                least = 0.004,
                most = 0.3,
                why = "tubes of cars lie within this")
        @Required("With a caliper.")
        Given mainDiameter,

        @Asked(
                label = "angle between both tubes",
                dimension = ANGLE,
                least = 0.26,
                most = 2.88,
                why = "a flatter joint than 15 degrees cannot be welded")
        @Required("90 deg when one stands square on the other.")
        Given angle,

        @Asked(
                label = "offset of their axes",
                dimension = LENGTH,
                least = -0.15,
                most = 0.15,
                why = "the tubes would miss each other",
                how = "How far the axes miss each other; leave out when they meet.")
        @Nullable
        Given offset) {}
