package org.brakewright.analysis.mount;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.brakewright.analysis.mount.MountState.PartState;
import org.brakewright.kernel.structure.Beam;
import org.brakewright.kernel.structure.BeamResult;
import org.brakewright.kernel.structure.CaseResult;
import org.brakewright.kernel.structure.Shell;
import org.brakewright.kernel.structure.ShellResult;
import org.brakewright.kernel.structure.Vector3;
import org.brakewright.model.resolved.ResolvedMount.Loads;
import org.brakewright.model.resolved.ResolvedMount.Material;
import org.brakewright.model.resolved.ResolvedMount.Stringer;
import org.brakewright.model.resolved.ResolvedMount.Structure;

/**
 * Where sheets and bars are stressed most under 1 N. In sheets the corner stresses of the triangles of one part that
 * meet at a node are averaged; under washers and feet, where the sheet is clamped between discs, nothing is judged.
 */
final class PartStresses {
    /** Stations along a bar, ends included. */
    private static final int STATIONS = 41;

    /** Rounding and no more, Pa/N: a pascal under a megapascal a newton. */
    private static final double UNSTRESSED = 1e-3;

    private final LoadedMount loaded;
    private final Map<String, Peak> peaks = new LinkedHashMap<>();

    /**
     * The greatest stress of a part.
     *
     * @param stress von Mises, Pa/N
     */
    record Peak(double stress, Vector3 at, Material material) {}

    PartStresses(LoadedMount loaded) {
        this.loaded = loaded;
        looked(loaded.straight());
        loaded.slanted().forEach(this::looked);
        peaks.values().removeIf(peak -> !(peak.stress() > UNSTRESSED));
    }

    /** By path, sheets first; what no push stresses is left out. */
    Map<String, Peak> peaks() {
        return peaks;
    }

    List<PartState> states(PartNames names, Loads loads) {
        List<PartState> states = new ArrayList<>();
        peaks.forEach((path, peak) -> {
            Material material = peak.material();
            states.add(new PartState(
                    path,
                    names.of(path),
                    material.name(),
                    material.source(),
                    material.yieldStress(),
                    material.tensileStrength(),
                    LoadedMount.place(peak.at()),
                    peak.stress() * loads.stiffness(),
                    peak.stress() * loads.strength(),
                    material.yieldStress() / peak.stress(),
                    material.tensileStrength() / peak.stress()));
        });
        return List.copyOf(states);
    }

    private void looked(CaseResult result) {
        Map<String, Map<Integer, Mean>> sheets = new LinkedHashMap<>();
        Map<String, Material> materials = new LinkedHashMap<>();
        for (MountModel.SheetPiece piece : loaded.model().sheets()) {
            if (piece.judged()) {
                materials.put(piece.part(), piece.material());
                corners(sheets.computeIfAbsent(piece.part(), _ -> new LinkedHashMap<>()), piece.element(), result);
            }
        }
        sheets.forEach((part, nodes) -> nodes.forEach(
                (node, mean) -> note(part, new Peak(mean.value(), nodes(node), requireNonNull(materials.get(part))))));
        loaded.model().bars().forEach((path, elements) -> elements.forEach(element -> bar(path, element, result)));
    }

    private void corners(Map<Integer, Mean> means, int element, CaseResult result) {
        if (loaded.model().structure().elements().get(element) instanceof Shell shell) {
            ShellResult stress = result.shell(element);
            means.computeIfAbsent(shell.a(), _ -> new Mean()).add(stress.atA().vonMises());
            means.computeIfAbsent(shell.b(), _ -> new Mean()).add(stress.atB().vonMises());
            means.computeIfAbsent(shell.c(), _ -> new Mean()).add(stress.atC().vonMises());
        }
    }

    private Vector3 nodes(int node) {
        return loaded.model().structure().nodes().get(node);
    }

    private void bar(String path, int element, CaseResult result) {
        BeamResult beam = result.beam(element);
        Material material = material(path, loaded.mount().structure());
        if (loaded.model().structure().elements().get(element) instanceof Beam bar) {
            Vector3 start = nodes(bar.start().node());
            Vector3 along = nodes(bar.end().node()).minus(start);
            for (int i = 0; i < STATIONS; i++) {
                double share = (double) i / (STATIONS - 1);
                note(path, new Peak(beam.stress(share).vonMises(), start.plus(along.times(share)), material));
            }
        }
    }

    private Material material(String path, Structure structure) {
        for (int i = 0; i < structure.stringers().size(); i++) {
            Stringer stringer = structure.stringers().get(i);
            if (path.equals("mount.stringers[" + i + "]")) {
                return stringer.material();
            }
        }
        return path.equals("mount.cross_tube")
                ? structure.crossTube().orElseThrow().material()
                : loaded.mount().pedal().material();
    }

    private void note(String path, Peak peak) {
        peaks.merge(path, peak, (a, b) -> a.stress() >= b.stress() ? a : b);
    }

    /** A mean that grows. */
    private static final class Mean {
        private double sum;
        private int count;

        void add(double value) {
            sum += value;
            count++;
        }

        double value() {
            return sum / count;
        }
    }
}
