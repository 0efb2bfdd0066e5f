package org.brakewright.analysis.mount;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.brakewright.analysis.mount.MountState.OptionState;
import org.brakewright.analysis.mount.MountState.Tried;
import org.brakewright.kernel.structure.Vector3;
import org.brakewright.kernel.structure.section.Section;
import org.brakewright.kernel.structure.section.Sections;
import org.brakewright.model.resolved.ResolvedMount.Lay;
import org.brakewright.model.resolved.ResolvedMount.Panel;
import org.brakewright.model.resolved.ResolvedMount.Plate;
import org.brakewright.model.resolved.ResolvedMount.Stringer;
import org.brakewright.model.resolved.ResolvedMount.Structure;

/**
 * What each addition gains for its mass: those told, by what their absence would lose, and some that are not told. A
 * tube that is tried is hinged at the pivot and at something that gives way not at all, so it gains at most that much.
 */
final class BraceOptions {
    /** Of the tubes tried, m; a usual brace. */
    private static final double LENGTH = 0.3;

    private static final double DIAMETER = 22e-3;
    private static final double WALL = 1.5e-3;
    private static final double STEEL_YOUNG = 205e9;
    private static final double STEEL_DENSITY = 7850;

    private final Structure whole;
    private final Stiffening stiffening;
    private final double give;
    private final List<OptionState> states = new ArrayList<>();

    /** Each takes a solution, so they are made side by side. */
    private final List<Supplier<List<OptionState>>> comparisons = new ArrayList<>();

    private BraceOptions(Structure whole, Stiffening stiffening, double give) {
        this.whole = whole;
        this.stiffening = stiffening;
        this.give = give;
    }

    /** Most gained for its mass first. */
    static List<OptionState> of(Structure whole, Settled.Firm firm, Stiffening stiffening) {
        BraceOptions options = new BraceOptions(whole, stiffening, firm.give(whole, stiffening.pedal()));
        options.told();
        options.skin();
        options.comparisons.parallelStream()
                .map(Supplier::get)
                .flatMap(List::stream)
                .toList()
                .forEach(options.states::add);
        options.tubes(firm);
        options.states.sort(Comparator.comparingDouble(OptionState::gainedPerKg).reversed());
        return List.copyOf(options.states);
    }

    private void told() {
        for (Plate plate : whole.plates()) {
            List<Plate> others = whole.plates().stream()
                    .filter(other -> !other.equals(plate))
                    .toList();
            if (plate.lay() != Lay.REPLACES) {
                without(plate.path(), plate.name(), stiffening.mass(plate, whole), with(others, whole.stringers()));
            }
        }
        for (int i = 0; i < whole.stringers().size(); i++) {
            Stringer stringer = whole.stringers().get(i);
            List<Stringer> others = whole.stringers().stream()
                    .filter(other -> !other.equals(stringer))
                    .toList();
            without(
                    "mount.stringers[" + i + "]",
                    stringer.name(),
                    stiffening.mass(stringer),
                    with(whole.plates(), others));
        }
        whole.crossTube()
                .ifPresent(tube -> without(
                        "mount.cross_tube",
                        "cross tube",
                        stiffening.mass(tube),
                        new Structure(
                                whole.panel(),
                                whole.plates(),
                                whole.brackets(),
                                whole.stringers(),
                                Optional.empty(),
                                whole.pivot())));
    }

    private Structure with(List<Plate> plates, List<Stringer> stringers) {
        return new Structure(whole.panel(), plates, whole.brackets(), stringers, whole.crossTube(), whole.pivot());
    }

    /** Something on the mount; kg. */
    private record Addition(Tried tried, String path, String name, double mass) {
        static Addition untold(Tried tried, double mass) {
            return new Addition(tried, "", "", mass);
        }
    }

    private void without(String path, String name, double mass, Structure rest) {
        Addition told = new Addition(Tried.TOLD, path, name, mass);
        comparisons.add(() -> stiffening.give(rest).map(lost -> state(told, lost, give)).stream()
                .toList());
    }

    private void skin() {
        Panel panel = whole.panel();
        Panel doubled = new Panel(
                panel.outline(),
                2 * panel.thickness(),
                panel.material(),
                panel.edges(),
                panel.edgeStiffness(),
                panel.rake(),
                panel.holes());
        Structure skinned = new Structure(
                doubled, whole.plates(), whole.brackets(), whole.stringers(), whole.crossTube(), whole.pivot());
        double mass =
                stiffening.mesh().area() * panel.thickness() * panel.material().density();
        Addition skin = Addition.untold(Tried.SKIN, mass);
        comparisons.add(() -> stiffening.give(skinned).map(after -> state(skin, give, after)).stream()
                .toList());
    }

    private void tubes(Settled.Firm firm) {
        double slope = Math.sqrt(0.5);
        tube(firm, Tried.UP, List.of(new Vector3(0, 0, 1)));
        tube(firm, Tried.UP_AND_BACK, List.of(new Vector3(-slope, 0, slope)));
        tube(firm, Tried.BACK, List.of(new Vector3(-1, 0, 0)));
        tube(firm, Tried.ASIDE, List.of(new Vector3(0, 1, 0), new Vector3(0, -1, 0)));
    }

    private void tube(Settled.Firm firm, Tried tried, List<Vector3> along) {
        Section section = Sections.roundTube(DIAMETER, WALL);
        double rate = STEEL_YOUNG * section.area() / LENGTH * along.size();
        double mass = STEEL_DENSITY * section.area() * LENGTH * along.size();
        double after = firm.giveWithTie(whole, stiffening.pedal(), along.getFirst(), rate);
        states.add(state(Addition.untold(tried, mass), give, after));
    }

    private OptionState state(Addition addition, double without, double with) {
        double gained = stiffening.stiffness(with) - stiffening.stiffness(without);
        return new OptionState(
                addition.tried(),
                addition.path(),
                addition.name(),
                addition.mass(),
                gained,
                gained / addition.mass(),
                stiffening.padInUse(with));
    }
}
