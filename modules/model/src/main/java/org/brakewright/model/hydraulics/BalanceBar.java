package org.brakewright.model.hydraulics;

import static org.brakewright.quantity.Dimension.ANGLE;
import static org.brakewright.quantity.Dimension.LENGTH;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Label;
import org.jspecify.annotations.Nullable;

/** The balance bar as written. */
public record BalanceBar(
        @Asked(
                label = "clevis spacing",
                dimension = LENGTH,
                least = 0.02,
                most = 0.2,
                why = "a bar between two masters lies within this",
                how = "Between the centres of the two clevises.")
        @Nullable
        Given clevisSpacing,

        @Asked(
                label = "bearing offset toward the front clevis",
                dimension = LENGTH,
                least = -0.1,
                most = 0.1,
                why = "the bearing lies between the clevises",
                how =
                        "From the middle between the clevises to the middle of the bearing; plus is toward the front master.")
        @Nullable
        Given offset,

        @Asked(
                label = "bearing movement per turn of the adjuster",
                dimension = LENGTH,
                least = 0.0001,
                most = 0.005,
                why = "it is the pitch of the bar's thread",
                how = "Count ten turns and divide the movement by ten.")
        @Nullable
        Given movementPerTurn,

        @Asked(
                label = "largest offset either way",
                dimension = LENGTH,
                least = 0.0005,
                most = 0.08,
                why = "the bearing must stay between the clevises",
                how = "Turn the adjuster to its end and measure.")
        @Nullable
        Given offsetLimit,

        @Asked(
                label = "largest tilt of the bar",
                dimension = ANGLE,
                least = 0.01,
                most = 1.0,
                why = "a bar binds long before 57 degrees",
                how = "Tilt the bar on the bench until a clevis touches and measure the angle from square.")
        @Nullable
        Given tiltLimit,

        @Label(
                value = "locked for the road",
                how = "yes when the adjuster is mechanically disabled, for example lock-wired, and labelled.")
        @Nullable
        Boolean lockedForRoad) {}
