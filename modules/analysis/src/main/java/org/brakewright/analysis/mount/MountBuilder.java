package org.brakewright.analysis.mount;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.brakewright.kernel.mesh.PanelMesh;
import org.brakewright.kernel.mesh.Spot;
import org.brakewright.kernel.structure.Axes;
import org.brakewright.kernel.structure.Beam;
import org.brakewright.kernel.structure.BeamEnd;
import org.brakewright.kernel.structure.BeamProperty;
import org.brakewright.kernel.structure.Element;
import org.brakewright.kernel.structure.Freedom;
import org.brakewright.kernel.structure.Spring;
import org.brakewright.kernel.structure.SpringRate;
import org.brakewright.kernel.structure.StructureModel;
import org.brakewright.kernel.structure.Support;
import org.brakewright.kernel.structure.Vector3;
import org.brakewright.model.mount.EndJoint;
import org.brakewright.model.resolved.ResolvedMount.Bolts;
import org.brakewright.model.resolved.ResolvedMount.Bracket;
import org.brakewright.model.resolved.ResolvedMount.CrossTube;
import org.brakewright.model.resolved.ResolvedMount.Near;
import org.brakewright.model.resolved.ResolvedMount.PedalPoints;
import org.brakewright.model.resolved.ResolvedMount.Stringer;
import org.brakewright.model.resolved.ResolvedMount.Structure;

/** Builds the structure of a mount on a meshed panel. */
final class MountBuilder {
    /** Of what is meant to be rigid, N/m: a hundred times and more what any sheet has. */
    private static final double STIFF = 1e9;

    private static final String CROSS_TUBE = "mount.cross_tube";
    private static final String ARM = "mount.arm";

    /** The bearing lets the pedal swing: the section's y axis lies across the car on an arm that stands. */
    private static final Set<Freedom> SWING = Set.of(Freedom.TURN_Y);

    private final Structure structure;
    private final PanelMesh mesh;
    private final PanelFrame frame;
    private final StructureModel.Builder model = StructureModel.builder();
    private final List<Vector3> places = new ArrayList<>();
    private final Set<Integer> tied = new HashSet<>();
    private final List<Integer> brackets = new ArrayList<>();
    private final Map<String, List<Integer>> fasteners = MountModel.ordered();
    private final Map<String, List<Integer>> bars = MountModel.ordered();
    private final Map<String, Set<Integer>> grounded = MountModel.ordered();

    private MountBuilder(Structure structure, PanelMesh mesh) {
        this.structure = structure;
        this.mesh = mesh;
        this.frame = PanelFrame.leaning(structure.panel().rake());
    }

    /** The mount without a pedal. */
    static MountModel bare(Structure structure, PanelMesh mesh) {
        MountBuilder builder = new MountBuilder(structure, mesh);
        return builder.model(-1, builder.fixed());
    }

    /** The mount with its pedal, whose rod is stiff. */
    static MountModel withPedal(Structure structure, PanelMesh mesh, PedalPoints points) {
        MountBuilder builder = new MountBuilder(structure, mesh);
        List<MountModel.SheetPiece> sheets = builder.fixed();
        return builder.model(builder.pedal(points), sheets);
    }

    private MountModel model(int pad, List<MountModel.SheetPiece> sheets) {
        return new MountModel(
                model.build(), frame, mesh.nodes().size(), brackets, sheets, fasteners, bars, grounded, pad);
    }

    private List<MountModel.SheetPiece> fixed() {
        mesh.nodes().forEach(spot -> node(frame.place(spot)));
        List<MountModel.SheetPiece> sheets = new PanelSheets(structure, mesh).add(model);
        PanelEdges.of(structure.panel(), mesh).hold(model, grounded, tied);
        for (int i = 0; i < structure.brackets().size(); i++) {
            bracket(structure.brackets().get(i), PanelPlans.bracketPath(i));
        }
        for (int i = 0; i < structure.stringers().size(); i++) {
            stringer(structure.stringers().get(i), i);
        }
        structure.crossTube().ifPresent(this::crossTube);
        return sheets;
    }

    private int node(Vector3 at) {
        places.add(at);
        return model.node(at.x(), at.y(), at.z());
    }

    private int follower(int leader, Vector3 at) {
        int node = node(at);
        model.link(leader, node);
        return node;
    }

    private void bracket(Bracket bracket, String path) {
        List<Vector3> seats = new ArrayList<>();
        bracket.bolts().ifPresent(bolts -> bolts.positions().forEach(spot -> seats.add(frame.place(spot))));
        bracket.welds()
                .forEach(weld -> seats.add(
                        frame.place(weld.from()).plus(frame.place(weld.to())).times(0.5)));
        Vector3 pivot = PanelFrame.vector(structure.pivot());
        Vector3 middle = seats.stream().reduce(Vector3.ZERO, Vector3::plus).times(1.0 / Math.max(1, seats.size()));
        int leader = node(bracket.pivot() || seats.isEmpty() ? pivot : middle);
        brackets.add(leader);
        bracket.bolts().ifPresent(bolts -> bolts(bolts, leader, path));
        for (int i = 0; i < bracket.welds().size(); i++) {
            weld(leader, PanelPlans.weldPath(path, i));
        }
    }

    private void bolts(Bolts bolts, int leader, String path) {
        SpringRate rate = BoltSeats.rate(bolts, structure.panel().material().young());
        for (int i = 0; i < bolts.positions().size(); i++) {
            String bolt = PanelPlans.boltPath(path, i);
            int onPanel = disc(bolt, bolts.washer());
            int onBracket = follower(leader, places.get(onPanel));
            note(fasteners, bolt, new Spring(path, onBracket, onPanel, frame.axes(), rate));
        }
    }

    /** The node in the middle of a washer or foot, which the others under it follow. */
    private int disc(String path, double diameter) {
        int middle = mesh.point(path);
        Spot center = mesh.nodes().get(middle);
        tied.add(middle);
        for (int i = 0; i < mesh.nodes().size(); i++) {
            if (mesh.nodes().get(i).to(center) < diameter / 2 * (1 + 1e-6) && tied.add(i)) {
                model.link(middle, i);
            }
        }
        return middle;
    }

    private void weld(int leader, String path) {
        List<Integer> nodes = mesh.line(path);
        double each = STIFF / nodes.size();
        SpringRate rate = new SpringRate(new Vector3(each, each, each), Vector3.ZERO);
        for (int node : nodes) {
            if (!tied.contains(node)) {
                int onBracket = follower(leader, places.get(node));
                note(fasteners, path, new Spring(path, onBracket, node, frame.axes(), rate));
            }
        }
    }

    private void note(Map<String, List<Integer>> map, String path, Element element) {
        MountModel.note(map, path, model.add(element));
    }

    private void stringer(Stringer stringer, int index) {
        String path = "mount.stringers[" + index + "]";
        int near = switch (stringer.near()) {
            case Near.OnPanel(var spot, double foot) -> disc(PanelPlans.stringerPath(index), foot);
            case Near.OnBracket(String bracket, var at) -> follower(leader(bracket), PanelFrame.vector(at));
        };
        int body = body(PanelFrame.vector(stringer.body()), path);
        bar(
                path,
                end(near, stringer.nearEnd()),
                end(body, stringer.bodyEnd()),
                Profiles.property(stringer.profile(), stringer.material()));
    }

    private void crossTube(CrossTube tube) {
        int right = body(PanelFrame.vector(tube.right()), CROSS_TUBE + ".right");
        int left = body(PanelFrame.vector(tube.left()), CROSS_TUBE + ".left");
        int leader = leader(tube.bracket());
        Vector3 from = places.get(right);
        Vector3 along = places.get(left).minus(from);
        double share = places.get(leader).minus(from).dot(along) / along.dot(along);
        int middle = follower(leader, from.plus(along.times(Math.clamp(share, 0.05, 0.95))));
        BeamProperty property = Profiles.property(tube.profile(), tube.material());
        bar(CROSS_TUBE, end(right, tube.ends()), BeamEnd.fixed(middle), property);
        bar(CROSS_TUBE, BeamEnd.fixed(middle), end(left, tube.ends()), property);
    }

    private int leader(String bracket) {
        List<String> names = structure.brackets().stream().map(Bracket::name).toList();
        return brackets.get(names.indexOf(bracket));
    }

    private int body(Vector3 at, String path) {
        int node = node(at);
        model.support(new Support(node, Support.CLAMP));
        grounded.computeIfAbsent(path, ignored -> new LinkedHashSet<>()).add(node);
        return node;
    }

    private static BeamEnd end(int node, EndJoint joint) {
        return switch (joint) {
            case WELDED -> BeamEnd.fixed(node);
            case HINGED -> BeamEnd.releasing(node, BeamEnd.HINGE);
        };
    }

    private void bar(String path, BeamEnd start, BeamEnd end, BeamProperty property) {
        Vector3 along = places.get(end.node()).minus(places.get(start.node()));
        note(bars, path, new Beam(path, start, end, Profiles.up(along), property));
    }

    /** Hinged at the pivot about the axis across the car, held by the rod at its pin; returns the pad's node. */
    private int pedal(PedalPoints points) {
        int bearing = follower(
                brackets.get(MountModel.pivotBracket(structure.brackets())), PanelFrame.vector(points.pivot()));
        int flange = follower(
                brackets.get(MountModel.mastersBracket(structure.brackets())), PanelFrame.vector(points.socket()));
        int pin = node(PanelFrame.vector(points.pin()));
        int pad = node(PanelFrame.vector(points.pad()));
        BeamProperty property = Profiles.property(points.profile(), points.material());
        bar(ARM, BeamEnd.releasing(bearing, SWING), BeamEnd.fixed(pin), property);
        bar(ARM, BeamEnd.fixed(pin), BeamEnd.fixed(pad), property);
        Vector3 along = places.get(flange).minus(places.get(pin));
        Axes rod = Axes.along(along, Profiles.up(along));
        model.add(new Spring("mount.rod", pin, flange, rod, SpringRate.axial(STIFF)));
        return pad;
    }
}
