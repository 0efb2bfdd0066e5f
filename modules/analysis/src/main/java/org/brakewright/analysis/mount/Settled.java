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
            return compliance.give(loads(structure, pedal));
        }

        /**
         * The same with a hinged bar from the pivot to something rigid.
         *
         * @param along the bar, of length one
         * @param rate of the bar, N/m
         */
        double giveWithTie(Structure structure, PedalForces pedal, Vector3 along, double rate) {
            Wrench[] tie = nothing();
            int pivot = MountModel.pivotBracket(structure.brackets());
            tie[pivot] = PedalForces.about(Wrench.ofForce(along), pedal.pivot(), places.get(pivot));
            Wrench[] loads = loads(structure, pedal);
            double moved = compliance.between(tie, loads);
            return compliance.give(loads) - moved * moved * rate / (1 + rate * compliance.give(tie));
        }

        private Wrench[] loads(Structure structure, PedalForces pedal) {
            Wrench[] loads = nothing();
            int pivot = MountModel.pivotBracket(structure.brackets());
            int masters = MountModel.mastersBracket(structure.brackets());
            loads[pivot] = PedalForces.about(pedal.atPivot(), pedal.pivot(), places.get(pivot));
            Wrench thrust = PedalForces.about(pedal.atMasters(), pedal.socket(), places.get(masters));
            loads[masters] = new Wrench(
                    loads[masters].force().plus(thrust.force()),
                    loads[masters].moment().plus(thrust.moment()));
            return loads;
        }

        private Wrench[] nothing() {
            Wrench[] loads = new Wrench[places.size()];
            Arrays.fill(loads, Wrench.NONE);
            return loads;
        }
    }

    /** Something moves without resistance; path of the part, and of those that move along. */
    record Loose(String part, List<String> along) implements Settled {}

    /** The panel cannot be meshed. */
    record Unmeshed(String path) implements Settled {}
}
