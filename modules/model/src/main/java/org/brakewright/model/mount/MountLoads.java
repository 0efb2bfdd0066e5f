package org.brakewright.model.mount;

import static org.brakewright.quantity.Dimension.FORCE;
import static org.brakewright.quantity.Dimension.RATIO;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.jspecify.annotations.Nullable;

/** What the mount is asked to carry; left out, everyday proposals are taken. */
public record MountLoads(
        @Asked(
                label = "foot force in use",
                dimension = FORCE,
                least = 50.0,
                most = 10000.0,
                why = "feet push within this",
                how = "Everything must work well at this.")
        @Nullable
        Given function,

        @Asked(
                label = "foot force without lasting set",
                dimension = FORCE,
                least = 50.0,
                most = 10000.0,
                why = "feet push within this",
                how = "Once in a while; nothing may stay bent.")
        @Nullable
        Given stiffness,

        @Asked(
                label = "foot force in an emergency",
                dimension = FORCE,
                least = 50.0,
                most = 10000.0,
                why = "feet push within this",
                how = "Nothing may break.")
        @Nullable
        Given strength,

        @Asked(
                label = "sideways share of the foot force",
                dimension = RATIO,
                least = 0.0,
                most = 0.5,
                why = "a foot slips off before it pushes harder to the side",
                how = "Force across the car over force along it.")
        @Nullable
        Given sideways,

        @Asked(
                label = "stops in its life",
                dimension = RATIO,
                least = 1000.0,
                most = 100000000.0,
                why = "fewer is a trailer and more is a taxi fleet",
                how = "Every push on the pedal counts; about six a mile in town.")
        @Nullable
        Given stops,

        @Asked(
                label = "foot force of an everyday stop",
                dimension = FORCE,
                least = 20.0,
                most = 2000.0,
                why = "feet push within this",
                how = "With a scale on the pad at a usual stop.")
        @Nullable
        Given stopForce,

        @Asked(
                label = "chance that no crack starts",
                dimension = RATIO,
                least = 0.5,
                most = 0.9999,
                why = "less is a coin tossed",
                how = "0.977 is the chance that published curves are drawn for.")
        @Nullable
        Given survival) {}
