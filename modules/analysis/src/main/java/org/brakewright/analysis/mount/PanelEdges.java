package org.brakewright.analysis.mount;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.brakewright.kernel.mesh.PanelMesh;
import org.brakewright.kernel.structure.Freedom;
import org.brakewright.kernel.structure.Spring;
import org.brakewright.kernel.structure.SpringRate;
import org.brakewright.kernel.structure.StructureModel;
import org.brakewright.kernel.structure.Support;
import org.brakewright.kernel.structure.Vector3;
import org.brakewright.model.mount.EdgeHold;
import org.brakewright.model.resolved.ResolvedMount.Panel;

/** Holds the edges of a panel; where two sides meet, the firmer one holds the corner. */
final class PanelEdges {
    private final Map<Integer, EdgeHold> holds = new LinkedHashMap<>();
    private final Map<Integer, Integer> sides = new LinkedHashMap<>();
    private final Map<Integer, Double> rates = new LinkedHashMap<>();

    private PanelEdges() {}

    static PanelEdges of(Panel panel, PanelMesh mesh) {
        PanelEdges edges = new PanelEdges();
        List<List<Integer>> rims = mesh.rim(PanelPlans.OUTLINE);
        for (int side = 0; side < rims.size(); side++) {
            List<Integer> nodes = rims.get(side);
            for (int node : nodes) {
                edges.hold(node, side, panel.edges().get(side));
            }
            if (panel.edges().get(side) == EdgeHold.SPRUNG) {
                edges.spread(nodes, mesh, panel.edgeStiffness());
            }
        }
        return edges;
    }

    private void hold(int node, int side, EdgeHold hold) {
        EdgeHold before = holds.getOrDefault(node, EdgeHold.FREE);
        if (hold.compareTo(before) < 0) {
            holds.put(node, hold);
            sides.put(node, side);
        }
    }

    /** To each node the stiffness of half of both lengths beside it. */
    private void spread(List<Integer> nodes, PanelMesh mesh, double whole) {
        double length = mesh.nodes().get(nodes.getFirst()).to(mesh.nodes().get(nodes.getLast()));
        for (int i = 0; i + 1 < nodes.size(); i++) {
            double half = mesh.nodes().get(nodes.get(i)).to(mesh.nodes().get(nodes.get(i + 1))) / 2;
            rates.merge(nodes.get(i), whole * half / length, Double::sum);
            rates.merge(nodes.get(i + 1), whole * half / length, Double::sum);
        }
    }

    /** Holds what is held, noting which side each held node lies on. */
    void hold(StructureModel.Builder model, Map<String, Set<Integer>> grounded, Set<Integer> tied) {
        holds.forEach((node, hold) -> {
            Set<Freedom> freedoms = switch (hold) {
                case CLAMPED -> Support.CLAMP;
                case HINGED -> Support.PIN;
                case SPRUNG, FREE -> Set.of();
            };
            if (!freedoms.isEmpty()) {
                model.support(new Support(node, freedoms));
                tied.add(node);
                grounded.computeIfAbsent("mount.panel.edges[" + sides.get(node) + "]", key -> new LinkedHashSet<>())
                        .add(node);
            } else {
                double rate = rates.getOrDefault(node, 0.0);
                tied.add(node);
                model.add(Spring.toGround(
                        "mount.panel", node, new SpringRate(new Vector3(rate, rate, rate), Vector3.ZERO)));
            }
        });
    }
}
