package org.brakewright.analysis.mount;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.brakewright.kernel.mesh.PanelMesh;
import org.brakewright.kernel.structure.CaseResult;
import org.brakewright.kernel.structure.Load;
import org.brakewright.kernel.structure.LoadCase;
import org.brakewright.kernel.structure.Motion;
import org.brakewright.kernel.structure.Solve;
import org.brakewright.kernel.structure.StructureOutcome;
import org.brakewright.kernel.structure.Vector3;
import org.brakewright.kernel.structure.Wrench;
import org.brakewright.model.resolved.ResolvedMount;
import org.brakewright.model.resolved.ResolvedMount.PedalPoints;
import org.brakewright.model.resolved.ResolvedMount.Place;

/**
 * A mount with its pedal under a foot of 1 N, fluid held fast.
 *
 * @param straight the foot alone
 * @param slanted with the sideways share to the left, and to the right
 */
record LoadedMount(
        ResolvedMount mount,
        PanelMesh mesh,
        MountModel model,
        PedalForces forces,
        CaseResult straight,
        List<CaseResult> slanted) {

    /** Empty when it does not stand. */
    static Optional<LoadedMount> of(ResolvedMount mount, PanelMesh mesh, double ratio) {
        PedalForces forces = PedalForces.of(mount.pedal()).withRatio(ratio);
        MountModel model = MountBuilder.withPedal(mount.structure(), mesh, moved(mount.pedal(), forces));
        Vector3 aside = new Vector3(0, mount.loads().sideways(), 0);
        List<LoadCase> cases = List.of(
                push(model, forces.foot()),
                push(model, forces.foot().plus(aside)),
                push(model, forces.foot().minus(aside)));
        return Solve.solve(model.structure(), cases) instanceof StructureOutcome.Solved(List<CaseResult> results)
                ? Optional.of(new LoadedMount(
                        mount, mesh, model, forces, results.getFirst(), results.subList(1, results.size())))
                : Optional.empty();
    }

    private static LoadCase push(MountModel model, Vector3 force) {
        return LoadCase.of("push", new Load.OnNode(model.pad(), Wrench.ofForce(force)));
    }

    private static PedalPoints moved(PedalPoints drawn, PedalForces forces) {
        return new PedalPoints(
                drawn.pivot(),
                drawn.pad(),
                place(forces.pin()),
                place(forces.socket()),
                drawn.profile(),
                drawn.material());
    }

    static Place place(Vector3 at) {
        return new Place(at.x(), at.y(), at.z());
    }

    /** The greatest of all ways to push. */
    double greatest(ToDoubleFunction<CaseResult> asked) {
        double most = asked.applyAsDouble(straight);
        for (CaseResult each : slanted) {
            most = Math.max(most, asked.applyAsDouble(each));
        }
        return most;
    }

    /** The pad along the foot, m/N. */
    double pad() {
        return straight.motion(model.pad()).shift().dot(forces.foot());
    }

    /** The pad across the car, m/N. */
    double aside() {
        double before = straight.motion(model.pad()).shift().y();
        return greatest(result -> Math.abs(result.motion(model.pad()).shift().y() - before));
    }

    /** The masters along their rods, m/N. */
    double flange() {
        int leader =
                model.brackets().get(MountModel.mastersBracket(mount.structure().brackets()));
        Motion motion = straight.motion(leader);
        Vector3 arm = forces.socket().minus(model.structure().nodes().get(leader));
        return motion.shift().plus(motion.turn().cross(arm)).dot(forces.rod());
    }
}
