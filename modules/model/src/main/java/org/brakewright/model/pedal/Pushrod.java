package org.brakewright.model.pedal;

import static org.brakewright.quantity.Dimension.LENGTH;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Required;

/** A threaded rod between the pedal's clevis and the master's piston, as it is cut and screwed together. */
public record Pushrod(
        @Asked(
                label = "thread diameter of the rod",
                dimension = LENGTH,
                least = 0.004,
                most = 0.02,
                why = "a thinner rod bends under a foot and a thicker one fits no master")
        @Required("Measure over the threads; 5/16 in and 8 mm are usual.")
        Given threadDiameter,

        @Asked(
                label = "thread pitch of the rod",
                dimension = LENGTH,
                least = 0.0004,
                most = 0.003,
                why = "rods carry fine or coarse threads between these")
        @Required("Measure ten threads and divide by ten; 24 threads per inch are 1.06 mm.")
        Given threadPitch,

        @Asked(
                label = "clevis pin to the face of the clevis",
                dimension = LENGTH,
                least = 0.005,
                most = 0.1,
                why = "a clevis is no longer than this")
        @Required("From the pin's centre to the face where the rod screws in.")
        Given clevisLength,

        @Asked(
                label = "thread depth in the clevis",
                dimension = LENGTH,
                least = 0.001,
                most = 0.1,
                why = "a clevis is no longer than this")
        @Required("How far the rod can be screwed in before it bottoms or fouls the pin.")
        Given clevisThread,

        @Asked(
                label = "height of the jam nut",
                dimension = LENGTH,
                least = 0.001,
                most = 0.02,
                why = "a nut is no higher than this")
        @Required("Measure the nut that locks the rod against the clevis.")
        Given jamNut) {}
