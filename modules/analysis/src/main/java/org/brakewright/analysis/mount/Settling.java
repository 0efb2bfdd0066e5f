package org.brakewright.analysis.mount;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.brakewright.kernel.mesh.MeshOutcome;
import org.brakewright.kernel.mesh.Mesher;
import org.brakewright.kernel.mesh.PanelMesh;
import org.brakewright.kernel.structure.CaseResult;
import org.brakewright.kernel.structure.Load;
import org.brakewright.kernel.structure.LoadCase;
import org.brakewright.kernel.structure.Solve;
import org.brakewright.kernel.structure.StructureOutcome;
import org.brakewright.kernel.structure.Vector3;
import org.brakewright.kernel.structure.Wrench;
import org.brakewright.model.resolved.ResolvedMount.Structure;

/**
 * Refines the mesh of a mount until its brackets move by less than {@link #SETTLED} more or less.
 *
 * <p>Maintainer's note. A car is resolved again and again with the same mount while cures and assumptions are tried, so
 * the last few answers are kept; the same structure has the same answer, so nothing is seen of that but the time. What is
 * compared with a mount, the same with less on it, is solved on that mount's mesh and not refined again.
 */
final class Settling {
    /** Share by which the movement may still change. */
    static final double SETTLED = 0.02;

    private static final double FINER = 0.6;
    private static final int MOST_ROUNDS = 5;

    private static final int KEPT = 64;

    private static final Map<Object, Settled> ANSWERS =
            Collections.synchronizedMap(new LinkedHashMap<>(KEPT, 0.75f, true) {
                private static final long serialVersionUID = 1;

                @Override
                protected boolean removeEldestEntry(Map.Entry<Object, Settled> eldest) {
                    return size() > KEPT;
                }
            });

    /** A structure on a mesh that was settled for another one. */
    private record OnMesh(Structure structure, PanelMesh mesh) {}

    private Settling() {}

    /** The mesh and compliance of a structure, or why there is none. */
    static Settled of(Structure structure) {
        return known(structure, () -> settle(structure));
    }

    /** The compliance of a structure on a mesh that is fine enough for one that is much like it. */
    static Settled on(Structure structure, PanelMesh mesh) {
        return known(new OnMesh(structure, mesh), () -> solved(structure, mesh));
    }

    private static Settled known(Object asked, Supplier<Settled> answer) {
        Settled known = ANSWERS.get(asked);
        if (known == null) {
            known = answer.get();
            ANSWERS.put(asked, known);
        }
        return known;
    }

    /** The same without looking for an earlier answer. */
    static Settled settle(Structure structure) {
        double factor = 1;
        Settled before = round(structure, factor);
        for (int round = 2; round <= MOST_ROUNDS && before instanceof Settled.Firm coarse; round++) {
            factor *= FINER;
            if (!(round(structure, factor) instanceof Settled.Firm fine)) {
                return coarse;
            }
            double change = fine.compliance().change(coarse.compliance());
            before = new Settled.Firm(fine.mesh(), fine.places(), fine.compliance(), change, round);
            if (change < SETTLED) {
                return before;
            }
        }
        return before;
    }

    private static Settled round(Structure structure, double factor) {
        return switch (Mesher.mesh(PanelPlans.plan(structure), PanelPlans.fineness(structure, factor))) {
            case MeshOutcome.Refused refused ->
                new Settled.Unmeshed(refused.faults().getFirst().name());
            case MeshOutcome.Meshed(PanelMesh mesh) -> solved(structure, mesh);
        };
    }

    private static Settled solved(Structure structure, PanelMesh mesh) {
        MountModel model = MountBuilder.bare(structure, mesh);
        return switch (Solve.solve(model.structure(), units(model.brackets()))) {
            case StructureOutcome.Solved(List<CaseResult> cases) -> firm(model, mesh, cases);
            case StructureOutcome.Loose loose -> new Settled.Loose(loose.part(), loose.parts());
            case StructureOutcome.Refused refused ->
                throw new IllegalStateException("a mount makes a sound model: " + refused.faults());
        };
    }

    private static Settled firm(MountModel model, PanelMesh mesh, List<CaseResult> cases) {
        List<Vector3> places = model.brackets().stream()
                .map(node -> model.structure().nodes().get(node))
                .toList();
        return new Settled.Firm(mesh, places, Compliance.of(cases, model.brackets()), 1, 1);
    }

    private static List<LoadCase> units(List<Integer> brackets) {
        List<Vector3> axes = List.of(new Vector3(1, 0, 0), new Vector3(0, 1, 0), new Vector3(0, 0, 1));
        List<LoadCase> cases = new ArrayList<>();
        for (int node : brackets) {
            axes.forEach(axis -> cases.add(unit(node, Wrench.ofForce(axis))));
            axes.forEach(axis -> cases.add(unit(node, new Wrench(Vector3.ZERO, axis))));
        }
        return cases;
    }

    private static LoadCase unit(int node, Wrench wrench) {
        return LoadCase.of("unit", new Load.OnNode(node, wrench));
    }
}
