package org.brakewright.model.mount;

import org.brakewright.model.Label;
import org.brakewright.model.Required;

/** A tube behind the dash from one side of the body to the other, joined to a bracket on its way. */
public record CrossTube(
        @Label("cross-section") @Required("Its shape and dimensions.")
        Profile profile,

        @Label("material") @Required("One of the materials that are known here, or a name from mount.materials.")
        String material,

        @Label("right end") @Required("Where it meets the body on the right.")
        Place right,

        @Label("left end") @Required("Where it meets the body on the left.")
        Place left,

        @Label("joints at the body") @Required("welded or hinged.")
        EndJoint ends,

        @Label("bracket it is joined to") @Required("Name of the bracket.")
        String carries) {}
