package org.brakewright.model.mount;

import static org.brakewright.quantity.Dimension.LENGTH;

import java.util.List;
import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Label;
import org.brakewright.model.Required;

/** A field of the panel that was cut out and replaced. */
public record Patch(
        @Label("name of the patch") @Required("Any name you know it by.")
        String name,

        @Label("outline") @Required("Its corners in order, at least three.")
        List<Spot> outline,

        @Asked(
                label = "thickness",
                dimension = LENGTH,
                least = 0.0003,
                most = 0.012,
                why = "thinner sheet is foil and thicker plate is no panel")
        @Required("With a caliper at a clean edge.")
        Given thickness,

        @Label("material") @Required("One of the materials that are known here, or a name from mount.materials.")
        String material) {}
