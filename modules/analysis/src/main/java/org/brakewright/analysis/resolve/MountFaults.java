package org.brakewright.analysis.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.brakewright.analysis.mount.PanelPlans;
import org.brakewright.kernel.mesh.MeshFault;
import org.brakewright.kernel.mesh.Mesher;
import org.brakewright.model.mount.Bracket;
import org.brakewright.model.mount.Carried;
import org.brakewright.model.mount.Mount;
import org.brakewright.model.resolved.ResolvedMount;
import org.brakewright.model.resolved.ResolvedMount.Bolts;
import org.brakewright.model.resolved.ResolvedMount.Lay;
import org.brakewright.model.resolved.ResolvedMount.Plate;
import org.brakewright.model.resolved.ResolvedMount.Structure;

/** Looks for what keeps a mount from being computed: all faults at once. */
final class MountFaults {
    private final Values values;

    MountFaults(Values values) {
        this.values = values;
    }

    void report(Mount mount, Structure structure) {
        carriers(mount.brackets());
        for (int i = 0; i < structure.brackets().size(); i++) {
            String path = "mount.brackets[" + i + "].bolts";
            structure.brackets().get(i).bolts().ifPresent(bolts -> bolts(bolts, path));
            tied(structure.brackets().get(i), structure, "mount.brackets[" + i + "]");
        }
        structure.plates().forEach(plate -> plate(plate, structure));
        for (MeshFault fault : Mesher.faults(PanelPlans.plan(structure))) {
            drawn(fault);
        }
    }

    private void carriers(List<Bracket> brackets) {
        for (Carried carried : Carried.values()) {
            List<String> carriers = new ArrayList<>();
            brackets.stream()
                    .filter(bracket -> bracket.carries().contains(carried))
                    .forEach(bracket -> carriers.add(bracket.name()));
            if (carriers.size() != 1) {
                String what = carried.name().toLowerCase(Locale.ROOT);
                values.problem(
                        "mount.brackets",
                        String.join(", ", carriers),
                        carriers.isEmpty()
                                ? "No bracket carries the " + what + "."
                                : "More than one bracket carries the " + what + ".",
                        "carries: with " + what + " at one bracket");
            }
        }
    }

    private void tied(ResolvedMount.Bracket bracket, Structure structure, String path) {
        boolean seated = bracket.bolts().isPresent() || !bracket.welds().isEmpty();
        boolean hung = structure.crossTube().stream()
                        .anyMatch(tube -> tube.bracket().equals(bracket.name()))
                || structure.stringers().stream()
                        .anyMatch(each -> each.near() instanceof ResolvedMount.Near.OnBracket(String name, var at)
                                && name.equals(bracket.name()));
        if (!seated && !hung) {
            values.problem(
                    path,
                    bracket.name(),
                    "The bracket is tied to nothing: no bolt, weld, stringer or cross tube holds it.",
                    "bolts, welds, or a bar that is joined to it");
        }
    }

    private void bolts(Bolts bolts, String path) {
        if (bolts.screw().pitch() > bolts.screw().diameter() / 3) {
            values.problem(
                    path + ".pitch", "", "The thread would eat up the bolt.", "less than a third of the diameter");
        }
        if (bolts.hole() < bolts.screw().diameter()) {
            values.problem(path + ".hole", "", "The bolt does not pass through its hole.", "diameter or more");
        }
        if (bolts.washer() <= bolts.hole()) {
            values.problem(path + ".washer", "", "The washer falls through the hole.", "more than hole");
        }
        for (int i = 0; i < bolts.positions().size(); i++) {
            for (int j = 0; j < i; j++) {
                apart(bolts, path, i, j);
            }
        }
    }

    /** Washers that overlap lie on each other, and their holes nearly meet. */
    private void apart(Bolts bolts, String path, int bolt, int other) {
        ResolvedMount.Spot one = bolts.positions().get(bolt);
        ResolvedMount.Spot two = bolts.positions().get(other);
        double between = Math.hypot(one.across() - two.across(), one.up() - two.up());
        if (between < bolts.washer()) {
            values.problem(
                    path + ".positions[" + bolt + "]",
                    String.format(Locale.ROOT, "%.1f mm", between * 1e3),
                    "The bolt lies this near to " + path + ".positions[" + other + "]: their washers overlap.",
                    String.format(Locale.ROOT, "%.1f mm or more, the washer", bolts.washer() * 1e3));
        }
    }

    private void plate(Plate plate, Structure structure) {
        boolean same = plate.material().equals(structure.panel().material());
        if (plate.lay() == Lay.AS_ONE && !same) {
            values.problem(
                    plate.path() + ".joined",
                    "all_over",
                    "Two sheets of different materials are not computed as one.",
                    "at_bolts, which is the softer, or the panel's material");
        }
    }

    private void drawn(MeshFault fault) {
        boolean disc = fault.name().endsWith(PanelPlans.DISC);
        String path = fault.name().replace(PanelPlans.DISC, "");
        String other = fault.other().replace(PanelPlans.DISC, "");
        String at = String.format(
                Locale.ROOT,
                "across %.1f mm, up %.1f mm",
                fault.at().x() * 1e3,
                fault.at().y() * 1e3);
        values.problem(path, at, sentence(fault.kind(), other, disc), allowed(fault.kind()));
    }

    private static String sentence(MeshFault.Kind kind, String other, boolean disc) {
        return switch (kind) {
            case NAME_TWICE -> "This name is taken.";
            case RING_OPEN -> "The outline is open: it has fewer than three corners and encloses nothing.";
            case TOO_SHORT -> "Two corners or ends fall on one place.";
            case RING_CROSSES_ITSELF -> "The outline crosses or touches itself.";
            case HOLE_OUTSIDE -> "The hole does not lie whole inside the panel.";
            case HOLES_OVERLAP -> "The hole overlaps or touches " + other + ".";
            case REGION_OUTSIDE ->
                disc
                        ? "The washer or foot hangs over the edge of the panel."
                        : "It does not lie whole inside the panel.";
            case POINT_OUTSIDE -> "It lies outside the panel.";
            case POINT_IN_HOLE -> "It lies in the hole " + other + ", where there is no sheet.";
            case LINE_OUTSIDE -> "The weld leaves the panel.";
            case LINE_CROSSES_HOLE -> "The weld crosses the hole " + other + ", where there is no sheet.";
            case TOO_FINE -> "Its smallest details are too small for its size.";
        };
    }

    private static String allowed(MeshFault.Kind kind) {
        return switch (kind) {
            case NAME_TWICE -> "another name";
            case RING_OPEN -> "three corners or more";
            case TOO_SHORT -> "places apart from each other";
            case RING_CROSSES_ITSELF -> "corners in the order in which one walks round it";
            case HOLE_OUTSIDE, REGION_OUTSIDE, POINT_OUTSIDE, LINE_OUTSIDE -> "a place inside mount.panel.outline";
            case HOLES_OVERLAP -> "holes apart from each other";
            case POINT_IN_HOLE, LINE_CROSSES_HOLE -> "a place beside the hole, or no such hole";
            case TOO_FINE -> "larger holes and washers, or a smaller panel";
        };
    }
}
