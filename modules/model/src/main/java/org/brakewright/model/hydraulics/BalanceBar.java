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

        @Asked(
                label = "end float between the clevises",
                dimension = LENGTH,
                least = 0.0,
                most = 0.02,
                why = "more than 20 mm is a bar without its nuts",
                how = "Push the bar to one side and measure the gap that opens at the other clevis.")
        @Nullable
        Given sideFloat,

        @Asked(
                label = "clevis pins behind the bearing",
                dimension = LENGTH,
                least = -0.03,
                most = 0.03,
                why = "no bar carries its pins further off",
                how = "From the line through the bearing's centre back to the clevis pins; minus when they lie ahead.")
        @Nullable
        Given pinSetBack,

        @Asked(
                label = "lead of the front clevis at rest",
                dimension = LENGTH,
                least = -0.05,
                most = 0.05,
                why = "the bar would stand at its end",
                how =
                        "Lay a square on the pedal: how far the front clevis stands ahead of the rear one, both pistons home.")
        @Nullable
        Given restLead,

        @Asked(
                label = "length of the rods",
                dimension = LENGTH,
                least = 0.03,
                most = 0.4,
                why = "rods between bar and pistons lie within this",
                how = "From the clevis pin to the rod's end in the piston.")
        @Nullable
        Given rodLength,

        @Asked(
                label = "spacing of the masters",
                dimension = LENGTH,
                least = 0.02,
                most = 0.2,
                why = "two masters beside each other lie within this",
                how = "Between the axes of the two masters.")
        @Nullable
        Given masterSpacing,

        @Label(
                value = "locked for the road",
                how = "yes when the adjuster is mechanically disabled, for example lock-wired, and labelled.")
        @Nullable
        Boolean lockedForRoad) {}
