package org.brakewright.analysis.mount;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.brakewright.analysis.mount.MountState.BoltState;
import org.brakewright.analysis.mount.MountState.EnduranceState;
import org.brakewright.analysis.mount.MountState.JudgedAs;
import org.brakewright.analysis.mount.MountState.WeldState;
import org.brakewright.kernel.fatigue.Detail;
import org.brakewright.kernel.fatigue.StressCycles;
import org.brakewright.model.mount.EndJoint;
import org.brakewright.model.mount.Family;
import org.brakewright.model.resolved.ResolvedMount.Bolts;
import org.brakewright.model.resolved.ResolvedMount.Bracket;
import org.brakewright.model.resolved.ResolvedMount.Loads;
import org.brakewright.model.resolved.ResolvedMount.Structure;

/** How many everyday stops, from no force to the everyday force and back, the parts stand. */
final class Endurance {
    private final LoadedMount loaded;
    private final PartNames names;
    private final List<EnduranceState> states = new ArrayList<>();

    private Endurance(LoadedMount loaded, PartNames names) {
        this.loaded = loaded;
        this.names = names;
    }

    /** Shortest first; what no stop stresses is left out. */
    static List<EnduranceState> of(
            LoadedMount loaded, PartNames names, PartStresses stresses, List<BoltState> bolts, List<WeldState> welds) {
        Endurance endurance = new Endurance(loaded, names);
        Loads loads = loaded.mount().loads();
        stresses.peaks()
                .forEach((path, peak) -> endurance.add(
                        path, endurance.as(path), peak.material().family(), peak.stress() * loads.stopForce()));
        Family sheet = loaded.mount().structure().panel().material().family();
        welds.forEach(weld -> endurance.add(
                weld.path(), JudgedAs.WELD_THROAT, sheet, weld.stiffnessPa() * loads.stopForce() / loads.stiffness()));
        bolts.forEach(bolt -> endurance.add(
                bolt.path(),
                JudgedAs.BOLT_TENSION,
                Family.STEEL,
                endurance.ofBolt(bolt) * loads.stopForce() / loads.strength()));
        endurance.states.sort(Comparator.comparingDouble(EnduranceState::stops));
        return List.copyOf(endurance.states);
    }

    private void add(String path, JudgedAs as, Family family, double range) {
        double stops = detail(as, family)
                .curve()
                .repeats(
                        List.of(new StressCycles(range, 1)),
                        loaded.mount().loads().survival());
        if (Double.isFinite(stops)) {
            states.add(new EnduranceState(path, names.of(path), as, range, stops));
        }
    }

    /** A joint that stays closed spares its bolt most of the pull; one that opens hands it all on. Pa under the strength load. */
    private double ofBolt(BoltState bolt) {
        Structure structure = loaded.mount().structure();
        for (int i = 0; i < structure.brackets().size(); i++) {
            Bracket bracket = structure.brackets().get(i);
            if (bolt.path().startsWith(PanelPlans.bracketPath(i))
                    && bracket.bolts().isPresent()) {
                Bolts bolts = bracket.bolts().get();
                boolean opens = bolt.opensAtN() != null
                        && bolt.opensAtN() < loaded.mount().loads().stopForce();
                double share = opens
                        ? 1
                        : BoltSeats.grip(bolts, structure.panel().material().young())
                                .boltShare();
                return share * bolt.tensionN() / BoltSeats.thread(bolts).stressArea();
            }
        }
        return 0;
    }

    private static Detail detail(JudgedAs as, Family family) {
        boolean steel = family == Family.STEEL;
        return switch (as) {
            case CUT_EDGE -> steel ? Detail.STEEL_SHEET : Detail.ALUMINIUM_SHEET;
            case AT_HOLE -> steel ? Detail.STEEL_AT_HOLE : Detail.ALUMINIUM_SHEET;
            case BESIDE_WELD -> steel ? Detail.STEEL_WELD_TOE : Detail.ALUMINIUM_WELD_TOE;
            case WELD_THROAT -> steel ? Detail.STEEL_WELD_THROAT : Detail.ALUMINIUM_WELD_THROAT;
            case BOLT_TENSION -> Detail.BOLT_TENSION;
        };
    }

    private JudgedAs as(String path) {
        if (weldedAt(path)) {
            return JudgedAs.BESIDE_WELD;
        }
        return path.equals("mount.arm") ? JudgedAs.CUT_EDGE : JudgedAs.AT_HOLE;
    }

    private boolean weldedAt(String path) {
        Structure structure = loaded.mount().structure();
        for (int i = 0; i < structure.stringers().size(); i++) {
            var stringer = structure.stringers().get(i);
            if (path.equals("mount.stringers[" + i + "]")) {
                return stringer.nearEnd() == EndJoint.WELDED || stringer.bodyEnd() == EndJoint.WELDED;
            }
        }
        boolean welded = structure.brackets().stream()
                .anyMatch(bracket -> !bracket.welds().isEmpty());
        return path.equals("mount.cross_tube") || (welded && path.equals("mount.panel"));
    }
}
