package org.brakewright.model.mount;

import static org.brakewright.quantity.Dimension.ANGLE;
import static org.brakewright.quantity.Dimension.LENGTH;
import static org.brakewright.quantity.Dimension.STIFFNESS;

import java.util.List;
import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Label;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/** The firewall, or whatever sheet the pedal is bolted to, flat. */
public record Panel(
        @Label("outline") @Required("Its corners in order, at least three; the last joins the first.")
        List<Spot> outline,

        @Asked(
                label = "thickness",
                dimension = LENGTH,
                least = 0.0003,
                most = 0.012,
                why = "thinner sheet is foil and thicker plate is no panel")
        @Required("With a caliper at a clean edge, paint off.")
        Given thickness,

        @Label("material") @Required("One of the materials that are known here, or a name from mount.materials.")
        String material,

        @Label("how each side is held")
        @Required("One word a side, the first from the first corner to the second: clamped, hinged, sprung or free.")
        List<EdgeHold> edges,

        @Asked(
                label = "stiffness of each sprung side",
                dimension = STIFFNESS,
                least = 1000.0,
                most = 10000000000.0,
                why = "a softer side is free and a stiffer one is hinged",
                how = "Force over movement of the whole side, square to the panel.")
        @Nullable
        Given edgeStiffness,

        @Asked(
                label = "lean of the panel",
                dimension = ANGLE,
                least = -1.3,
                most = 1.3,
                why = "a flatter sheet is a floor")
        @Required("From plumb: plus when its top lies farther forward; 0 deg when it stands plumb.")
        Given rake,

        @Label(value = "holes", how = "Those that stay open: for columns, shafts, looms.") @Nullable
        List<PanelHole> holes) {}
