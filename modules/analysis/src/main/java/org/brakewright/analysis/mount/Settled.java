package org.brakewright.analysis.mount;

import java.util.Arrays;
import java.util.List;
import org.brakewright.kernel.mesh.PanelMesh;
import org.brakewright.kernel.structure.Vector3;
import org.brakewright.kernel.structure.Wrench;
import org.brakewright.model.resolved.ResolvedMount.Structure;

/** How the search for a fine enough mesh ended. */
sealed interface Settled {

    /**
     * Fine enough.
     *
     * @param places of the bracket nodes
     * @param compliance of the bracket nodes
     * @param change of the compliance at the last refinement, share
     * @param rounds meshes tried
     */
    record Firm(PanelMesh mesh, List<Vector3> places, Compliance compliance, double change, int rounds)
            implements Settled {

        /** Movement of the foot over its force through all but the pedal itself, m/N. */
        double give(Structure structure, PedalForces pedal) {
            Wrench[] loads = new Wrench[places.size()];
            Arrays.fill(loads, Wrench.NONE);
            int pivot = MountModel.pivotBracket(structure.brackets());
            int masters = MountModel.mastersBracket(structure.brackets());
            loads[pivot] = PedalForces.about(pedal.atPivot(), pedal.pivot(), places.get(pivot));
            Wrench thrust = PedalForces.about(pedal.atMasters(), pedal.socket(), places.get(masters));
            loads[masters] = new Wrench(
                    loads[masters].force().plus(thrust.force()),
                    loads[masters].moment().plus(thrust.moment()));
            return compliance.give(loads);
        }
    }

    /** Something moves without resistance; path of the part, and of those that move along. */
    record Loose(String part, List<String> along) implements Settled {}

    /** The panel cannot be meshed. */
    record Unmeshed(String path) implements Settled {}
}
