package org.brakewright.kernel.mesh;

import java.util.List;

/** How the meshing of a plan ended. */
public sealed interface MeshOutcome {
    record Meshed(PanelMesh mesh) implements MeshOutcome {}

    /** The plan is not a panel; all faults at once. */
    record Refused(List<MeshFault> faults) implements MeshOutcome {
        public Refused {
            faults = List.copyOf(faults);
        }
    }
}
