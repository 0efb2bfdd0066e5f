package org.brakewright.model.lines;

import static org.brakewright.quantity.Dimension.LENGTH;

import java.util.List;
import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Label;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/** Where the lines run, what they join, and what bends them. All places are from one zero. */
public record Plumbing(
        @Label("bender") @Required("State the radius of the tool, or of the former you bend by hand.")
        Bender bender,

        @Asked(
                label = "lengths in which tube is bought",
                dimension = LENGTH,
                least = 0.1,
                most = 50.0,
                why = "tube is sold within this")
        @Required("Coils and straight lengths that you can buy or have.")
        List<Given> stockLengths,

        @Asked(
                label = "length that each cut loses",
                dimension = LENGTH,
                least = 0.0,
                most = 0.01,
                why = "a saw takes less",
                how = "Nothing for a cutter that rolls, about 1 mm for a hacksaw and its deburring.")
        @Nullable
        Given sawCut,

        @Asked(
                label = "length that a flare takes up",
                dimension = LENGTH,
                least = 0.0,
                most = 0.01,
                why = "a flare takes less",
                how = "Mark a trial piece 50 mm from its end, flare it, measure to the seat, and subtract.")
        @Nullable
        Given flareAllowance,

        @Asked(
                label = "straight behind a flare for nut and clamp",
                dimension = LENGTH,
                least = 0.005,
                most = 0.15,
                why = "nuts and flaring clamps lie within this",
                how = "The longer of the nut with its play and the clamp of the flaring tool.")
        @Nullable
        Given nutStraight,

        @Label("parts") @Required("Everything a line is screwed into: masters, tees, brackets, calipers.")
        List<Part> parts,

        @Label("tubes") @Required("Every rigid tube.") List<Tube> tubes,

        @Label(value = "hoses", how = "Every flexible hose.") @Nullable
        List<Hose> hoses,

        @Label(value = "obstacles", how = "What is hot, what moves, the wheels, and what is in the way.") @Nullable
        List<Obstacle> obstacles) {}
