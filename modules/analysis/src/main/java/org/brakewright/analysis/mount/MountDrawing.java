package org.brakewright.analysis.mount;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.brakewright.analysis.mount.MountShape.Bar;
import org.brakewright.analysis.mount.MountShape.Moved;
import org.brakewright.analysis.mount.MountShape.Push;
import org.brakewright.analysis.mount.MountShape.Sheet;
import org.brakewright.analysis.mount.MountState.Asked;
import org.brakewright.analysis.mount.MountState.Dress;
import org.brakewright.kernel.mesh.Triangle;
import org.brakewright.kernel.structure.Beam;
import org.brakewright.kernel.structure.CaseResult;
import org.brakewright.kernel.structure.Element;
import org.brakewright.kernel.structure.Spring;
import org.brakewright.kernel.structure.Vector3;
import org.brakewright.model.resolved.ResolvedMount.Place;
import org.brakewright.model.resolved.ResolvedMount.Plate;

/** Draws a mount as built, and moves it as it is, or as one with less on its panel. */
final class MountDrawing {
    private static final String PANEL = "mount.panel";
    private static final String ROD = "mount.rod";

    /** Of what is drawn for a bracket, and of the pushrod, m. */
    private static final double RIB = 4e-3;

    private final LoadedMount built;
    private final PartNames names;
    private final Map<String, SheetNodes> sheets = new LinkedHashMap<>();
    private final Map<String, List<Integer>> bars = new LinkedHashMap<>();

    /** Nodes of a sheet in its own order, and its triangles by their number in the mesh. */
    private record SheetNodes(Map<Integer, Integer> numbers, List<Integer> corners, List<Integer> triangles) {}

    MountDrawing(LoadedMount built) {
        this.built = built;
        this.names = new PartNames(built.mount().structure());
        List<Triangle> triangles = built.mesh().triangles();
        for (int i = 0; i < triangles.size(); i++) {
            sheet(triangles.get(i), i);
        }
        built.model().bars().forEach((path, elements) -> bars.put(path, along(built.model(), elements)));
        bars.put(ROD, rod(built.model()));
        for (int i = 0; i < built.model().brackets().size(); i++) {
            String path = PanelPlans.bracketPath(i);
            bars.put(path, ribs(built.model(), path, built.model().brackets().get(i)));
        }
    }

    private void sheet(Triangle triangle, int number) {
        String part = PANEL;
        for (Plate plate : built.mount().structure().plates()) {
            part = triangle.regions().contains(plate.path()) ? plate.path() : part;
        }
        SheetNodes nodes = sheets.computeIfAbsent(
                part, _ -> new SheetNodes(new LinkedHashMap<>(), new ArrayList<>(), new ArrayList<>()));
        for (int corner : new int[] {triangle.a(), triangle.b(), triangle.c()}) {
            int next = nodes.numbers().size();
            Integer known = nodes.numbers().putIfAbsent(corner, next);
            nodes.corners().add(known == null ? next : known);
        }
        nodes.triangles().add(number);
    }

    private static List<Integer> along(MountModel model, List<Integer> elements) {
        List<Integer> nodes = new ArrayList<>();
        for (int element : elements) {
            if (model.structure().elements().get(element) instanceof Beam beam) {
                if (nodes.isEmpty()) {
                    nodes.add(beam.start().node());
                }
                nodes.add(beam.end().node());
            }
        }
        return nodes;
    }

    private static List<Integer> rod(MountModel model) {
        return model.structure().elements().stream()
                .filter(element -> element.part().equals(ROD))
                .map(element -> element.nodes())
                .findFirst()
                .map(nodes -> List.of(nodes[0], nodes[1]))
                .orElseThrow();
    }

    /** From the bracket's node to each bolt and weld and back. */
    private static List<Integer> ribs(MountModel model, String bracket, int leader) {
        List<Integer> nodes = new ArrayList<>(List.of(leader));
        model.fasteners().forEach((path, springs) -> {
            if (path.startsWith(bracket)) {
                for (int spring : springs) {
                    if (model.structure().elements().get(spring) instanceof Spring each) {
                        nodes.add(each.from());
                        nodes.add(leader);
                    }
                }
            }
        });
        return nodes;
    }

    List<Sheet> sheets() {
        return sheets.entrySet().stream()
                .map(entry -> new Sheet(
                        entry.getKey(),
                        names.of(entry.getKey()),
                        entry.getValue().numbers().keySet().stream()
                                .map(node -> place(node))
                                .toList(),
                        List.copyOf(entry.getValue().corners())))
                .toList();
    }

    List<Bar> bars() {
        return bars.entrySet().stream()
                .map(entry -> new Bar(
                        entry.getKey(),
                        names.of(entry.getKey()),
                        radius(entry.getKey()),
                        entry.getValue().stream().map(this::place).toList()))
                .toList();
    }

    private double radius(String path) {
        return built.model().bars().getOrDefault(path, List.of()).stream()
                .map(element ->
                        built.straight().beam(element).property().section().area())
                .map(area -> Math.sqrt(area / Math.PI))
                .findFirst()
                .orElse(RIB);
    }

    private Place place(int node) {
        return LoadedMount.place(built.model().structure().nodes().get(node));
    }

    /** A push on the mount as built, or on one with less on the same panel. */
    Push push(LoadedMount loaded, Dress dress, Asked asked, double foot) {
        Peaks peaks = new Peaks();
        double[] stresses = stresses(loaded, foot, peaks);
        List<Moved> moved = sheets.values().stream()
                .map(nodes -> new Moved(
                        nodes.numbers().keySet().stream()
                                .map(node -> shift(loaded.straight(), node, foot))
                                .toList(),
                        nodes.triangles().stream()
                                .map(triangle -> stresses[triangle])
                                .toList()))
                .toList();
        List<Moved> barsMoved = bars.keySet().stream()
                .map(path -> bar(loaded, path, foot, peaks))
                .toList();
        return new Push(
                dress,
                asked,
                foot,
                loaded.pad() * foot,
                moved,
                barsMoved,
                peaks.highest,
                LoadedMount.place(peaks.at),
                Bulge.of(loaded, foot));
    }

    /** The greatest stress so far. */
    private static final class Peaks {
        private double highest;
        private Vector3 at = Vector3.ZERO;

        void see(double stress, Vector3 where) {
            if (stress > highest) {
                highest = stress;
                at = where;
            }
        }
    }

    /** Of the triangles of the mesh, the greatest of their sheets in the middle. */
    private static double[] stresses(LoadedMount loaded, double foot, Peaks peaks) {
        List<Triangle> triangles = loaded.mesh().triangles();
        double[] stresses = new double[triangles.size()];
        List<Element> elements = loaded.model().structure().elements();
        int triangle = -1;
        int[] before = new int[0];
        for (MountModel.SheetPiece piece : loaded.model().sheets()) {
            int[] nodes = elements.get(piece.element()).nodes();
            triangle += Arrays.equals(nodes, before) ? 0 : 1;
            before = nodes;
            if (piece.judged()) {
                double stress =
                        foot * loaded.straight().shell(piece.element()).center().vonMises();
                stresses[triangle] = Math.max(stresses[triangle], stress);
                peaks.see(stress, middle(loaded.model(), nodes));
            }
        }
        return stresses;
    }

    private static Vector3 middle(MountModel model, int[] nodes) {
        Vector3 sum = Vector3.ZERO;
        for (int node : nodes) {
            sum = sum.plus(model.structure().nodes().get(node));
        }
        return sum.times(1.0 / nodes.length);
    }

    private static Place shift(CaseResult result, int node, double foot) {
        return LoadedMount.place(result.motion(node).shift().times(foot));
    }

    /** The same bar of a mount with less on it has other numbers. */
    private Moved bar(LoadedMount loaded, String path, double foot, Peaks peaks) {
        MountModel model = loaded.model();
        List<Integer> elements = model.bars().getOrDefault(path, List.of());
        List<Integer> nodes = nodes(model, path, elements);
        List<Double> stresses = new ArrayList<>();
        for (int element : elements) {
            double stress = foot * loaded.straight().beam(element).greatestVonMises();
            stresses.add(stress);
            peaks.see(
                    stress,
                    middle(model, model.structure().elements().get(element).nodes()));
        }
        return new Moved(
                nodes.stream().map(node -> shift(loaded.straight(), node, foot)).toList(), List.copyOf(stresses));
    }

    private static List<Integer> nodes(MountModel model, String path, List<Integer> elements) {
        if (path.equals(ROD)) {
            return rod(model);
        }
        for (int i = 0; i < model.brackets().size(); i++) {
            if (path.equals(PanelPlans.bracketPath(i))) {
                return ribs(model, path, model.brackets().get(i));
            }
        }
        return along(model, elements);
    }
}
