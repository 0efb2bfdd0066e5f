package org.brakewright.model.mount;

import static org.brakewright.quantity.Dimension.LENGTH;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Label;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/** A bar from the panel or from a bracket to the body: a brace to cowl, dash or floor. */
public record Stringer(
        @Label("name of the stringer") @Required("Any name you know it by.")
        String name,

        @Label("cross-section") @Required("Its shape and dimensions.")
        Profile profile,

        @Label("material") @Required("One of the materials that are known here, or a name from mount.materials.")
        String material,

        @Label(value = "end on the panel", how = "Where it meets the panel; or give on_bracket and at.") @Nullable
        Spot onPanel,

        @Asked(
                label = "diameter of its foot on the panel",
                dimension = LENGTH,
                least = 0.005,
                most = 0.3,
                why = "a foot is a tab or a plate",
                how = "The plate or tab at its end, as a circle of about the same size.")
        @Nullable
        Given foot,

        @Label(value = "bracket it is joined to", how = "Name of the bracket; then at says where.") @Nullable
        String onBracket,

        @Label(value = "end on the bracket", how = "Where it meets the bracket.") @Nullable
        Place at,

        @Label("end at the body") @Required("Where it meets cowl, dash, floor or chassis.")
        Place body,

        @Label("joint on panel or bracket") @Required("welded or hinged.")
        EndJoint nearEnd,

        @Label("joint at the body") @Required("welded or hinged.")
        EndJoint bodyEnd) {}
