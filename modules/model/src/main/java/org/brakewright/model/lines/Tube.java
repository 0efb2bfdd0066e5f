package org.brakewright.model.lines;

import static org.brakewright.quantity.Dimension.LENGTH;

import java.util.List;
import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Label;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/** A rigid tube from part to part. */
public record Tube(
        @Label("name of the tube") @Required("Any name you know it by.")
        String name,

        @Label("material") @Required("What it was bought as; a magnet and the colour tell most.")
        TubeMaterial material,

        @Asked(
                label = "outside diameter",
                dimension = LENGTH,
                least = 0.003,
                most = 0.012,
                why = "brake tube lies within this")
        @Required("With a caliper.")
        Given outsideDiameter,

        @Asked(label = "wall", dimension = LENGTH, least = 0.0003, most = 0.003, why = "brake tube lies within this")
        @Required("From the sheet it was sold with, or with a caliper at a deburred end.")
        Given wall,

        @Label("start") @Required("The end of the first point.")
        LineEnd start,

        @Label("end") @Required("The end of the last point.")
        LineEnd end,

        @Label("route") @Required("Its ends and every corner between them, in order.")
        List<Corner> points,

        @Asked(
                label = "clips, along the tube from its start",
                dimension = LENGTH,
                least = 0.0,
                most = 12.0,
                why = "no brake tube is longer",
                how = "Measured along the tube; leave out while they are not chosen.")
        @Nullable
        List<Given> clips) {}
