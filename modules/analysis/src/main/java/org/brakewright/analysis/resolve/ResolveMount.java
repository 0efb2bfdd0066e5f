package org.brakewright.analysis.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakewright.model.mount.Bolts;
import org.brakewright.model.mount.Bracket;
import org.brakewright.model.mount.Carried;
import org.brakewright.model.mount.Doubler;
import org.brakewright.model.mount.EdgeHold;
import org.brakewright.model.mount.Joined;
import org.brakewright.model.mount.Measured;
import org.brakewright.model.mount.Mount;
import org.brakewright.model.mount.MountLoads;
import org.brakewright.model.mount.Panel;
import org.brakewright.model.mount.Patch;
import org.brakewright.model.mount.Weld;
import org.brakewright.model.pedal.Pedal;
import org.brakewright.model.resolved.ResolvedMount;
import org.brakewright.model.resolved.ResolvedMount.Foot;
import org.brakewright.model.resolved.ResolvedMount.Hole;
import org.brakewright.model.resolved.ResolvedMount.Lay;
import org.brakewright.model.resolved.ResolvedMount.Loads;
import org.brakewright.model.resolved.ResolvedMount.Plate;
import org.brakewright.model.resolved.ResolvedMount.Screw;
import org.brakewright.model.resolved.ResolvedMount.Structure;
import org.jspecify.annotations.Nullable;

/** Completes what carries the pedal. */
final class ResolveMount {
    private static final MountLoads NOTHING_ASKED = new MountLoads(null, null, null, null, null, null, null);

    private final Values values;
    private final MountPoints points;

    ResolveMount(Values values) {
        this.values = values;
        this.points = new MountPoints(values);
    }

    /** The mount; empty when not given or when it has faults. */
    Optional<ResolvedMount> mount(@Nullable Mount mount, Pedal pedal) {
        if (mount == null) {
            return Optional.empty();
        }
        int before = values.problems().size();
        MountMaterials materials = new MountMaterials(values, mount.materials());
        Structure structure = structure(mount, materials);
        var pedalPoints = new ResolvePedalPoints(values, materials).points(mount, pedal);
        Loads loads = loads(mount.loads() == null ? NOTHING_ASKED : mount.loads());
        var placeInCar = Optional.ofNullable(mount.placeInCar()).map(points::place);
        var measured = Optional.ofNullable(mount.measured()).map(this::measured);
        if (!values.anyOverridden()) {
            new MountFaults(values).report(mount, structure);
        }
        return values.problems().size() > before || pedalPoints.isEmpty()
                ? Optional.empty()
                : Optional.of(new ResolvedMount(structure, pedalPoints.get(), loads, placeInCar, measured));
    }

    private ResolvedMount.Measured measured(Measured measured) {
        return new ResolvedMount.Measured(
                values.need(measured.force()), values.need(measured.pad()), values.maybe(measured.flange()));
    }

    private Structure structure(Mount mount, MountMaterials materials) {
        ResolveBars bars = new ResolveBars(values, materials, mount.brackets());
        return new Structure(
                panel(mount.panel(), materials),
                plates(mount, materials),
                brackets(mount.brackets()),
                bars.stringers(all(mount.stringers())),
                Optional.ofNullable(mount.crossTube()).map(bars::crossTube),
                points.place(mount.pivot()));
    }

    private ResolvedMount.Panel panel(Panel panel, MountMaterials materials) {
        if (panel.edges().size() != panel.outline().size()) {
            values.problem(
                    "mount.panel.edges",
                    panel.edges().size() + " words",
                    "The outline has " + panel.outline().size() + " sides, each of which is held or free.",
                    panel.outline().size() + " words, one a side");
        }
        boolean sprung = panel.edges().contains(EdgeHold.SPRUNG);
        if (sprung && panel.edgeStiffness() == null) {
            values.problem(
                    "mount.panel.edge_stiffness",
                    "",
                    "A sprung side gives way by a stiffness that is not told.",
                    "a stiffness");
        }
        return new ResolvedMount.Panel(
                points.spots(panel.outline()),
                values.need(panel.thickness()),
                materials.of(panel.material(), "mount.panel.material"),
                panel.edges(),
                sprung ? values.maybe(panel.edgeStiffness()).orElse(0) : 0,
                values.need(panel.rake()),
                all(panel.holes()).stream()
                        .map(hole -> new Hole(points.spot(hole.across(), hole.up()), values.need(hole.diameter())))
                        .toList());
    }

    private List<Plate> plates(Mount mount, MountMaterials materials) {
        List<Plate> plates = new ArrayList<>();
        for (Patch patch : all(mount.patches())) {
            String path = "mount.patches[" + plates.size() + "]";
            plates.add(new Plate(
                    path,
                    patch.name(),
                    points.spots(patch.outline()),
                    values.need(patch.thickness()),
                    materials.of(patch.material(), path + ".material"),
                    Lay.REPLACES));
        }
        int patches = plates.size();
        for (Doubler doubler : all(mount.doublers())) {
            String path = "mount.doublers[" + (plates.size() - patches) + "]";
            plates.add(new Plate(
                    path,
                    doubler.name(),
                    points.spots(doubler.outline()),
                    values.need(doubler.thickness()),
                    materials.of(doubler.material(), path + ".material"),
                    doubler.joined() == Joined.ALL_OVER ? Lay.AS_ONE : Lay.SIDE_BY_SIDE));
        }
        return plates;
    }

    private List<ResolvedMount.Bracket> brackets(List<Bracket> brackets) {
        List<ResolvedMount.Bracket> resolved = new ArrayList<>();
        for (Bracket bracket : brackets) {
            String path = "mount.brackets[" + resolved.size() + "]";
            resolved.add(new ResolvedMount.Bracket(
                    bracket.name(),
                    bracket.carries().contains(Carried.PIVOT),
                    bracket.carries().contains(Carried.MASTERS),
                    bracket.side(),
                    Optional.ofNullable(bracket.bolts()).map(bolts -> bolts(bolts, path + ".bolts")),
                    all(bracket.welds()).stream().map(this::weld).toList()));
        }
        return resolved;
    }

    private ResolvedMount.Bolts bolts(Bolts bolts, String path) {
        double diameter = values.need(bolts.diameter());
        return new ResolvedMount.Bolts(
                new Screw(diameter, values.need(bolts.pitch())),
                bolts.grade(),
                points.spots(bolts.positions()),
                values.take(bolts.hole(), path + ".hole", MountDefaults.hole(diameter)),
                values.need(bolts.washer()),
                values.need(bolts.clamped()),
                values.take(bolts.engagement(), path + ".engagement", MountDefaults.engagement(diameter)),
                Optional.ofNullable(bolts.torque()).map(values::need),
                foot(bolts));
    }

    private Optional<Foot> foot(Bolts bolts) {
        return bolts.rootToBolt() == null || bolts.boltToEdge() == null
                ? Optional.empty()
                : Optional.of(new Foot(values.need(bolts.rootToBolt()), values.need(bolts.boltToEdge())));
    }

    private ResolvedMount.Weld weld(Weld weld) {
        return new ResolvedMount.Weld(points.spot(weld.from()), points.spot(weld.to()), values.need(weld.leg()));
    }

    private Loads loads(MountLoads loads) {
        return new Loads(
                values.take(loads.function(), "mount.loads.function", MountDefaults.FUNCTION),
                values.take(loads.stiffness(), "mount.loads.stiffness", MountDefaults.STIFFNESS),
                values.take(loads.strength(), "mount.loads.strength", MountDefaults.STRENGTH),
                values.take(loads.sideways(), "mount.loads.sideways", MountDefaults.SIDEWAYS),
                values.take(loads.stops(), "mount.loads.stops", MountDefaults.STOPS),
                values.take(loads.stopForce(), "mount.loads.stop_force", MountDefaults.STOP_FORCE),
                values.take(loads.survival(), "mount.loads.survival", MountDefaults.SURVIVAL));
    }

    static <T> List<T> all(@Nullable List<T> list) {
        return list == null ? List.of() : list;
    }
}
