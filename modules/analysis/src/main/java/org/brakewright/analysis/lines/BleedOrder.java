package org.brakewright.analysis.lines;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.brakewright.analysis.lines.LinesState.BleedStep;
import org.brakewright.analysis.lines.LinesState.PartState;
import org.brakewright.model.lines.Circuit;
import org.brakewright.model.lines.PartKind;

/**
 * In which order bleeders are opened: masters first, then the longest way first; with a balance bar one bleeder of each
 * brake circuit together, so that the bar can travel; the clutch by itself. Common practice, no source.
 */
final class BleedOrder {
    private BleedOrder() {}

    /** The steps. */
    static List<BleedStep> of(List<PartState> parts, boolean bar) {
        List<PartState> bleeders = parts.stream()
                .filter(PartState::bleeder)
                .sorted(Comparator.comparing((PartState part) -> part.kind() != PartKind.MASTER)
                        .thenComparing(
                                Comparator.comparingDouble(PartState::wayM).reversed()))
                .toList();
        List<PartState> clutch = of(bleeders, Circuit.CLUTCH);
        List<BleedStep> brakes = bar
                ? together(of(bleeders, Circuit.FRONT), of(bleeders, Circuit.REAR))
                : alone(bleeders.stream()
                        .filter(part -> part.circuit() != Circuit.CLUTCH)
                        .toList());
        return Stream.concat(brakes.stream(), alone(clutch).stream()).toList();
    }

    private static List<PartState> of(List<PartState> bleeders, Circuit circuit) {
        return bleeders.stream().filter(part -> part.circuit() == circuit).toList();
    }

    private static List<BleedStep> alone(List<PartState> bleeders) {
        return bleeders.stream()
                .map(part -> new BleedStep(List.of(part.name()), part.wayM()))
                .toList();
    }

    /** Where one circuit has fewer bleeders, its last, the nearest to the master, is opened again. */
    private static List<BleedStep> together(List<PartState> front, List<PartState> rear) {
        if (front.isEmpty() || rear.isEmpty()) {
            return alone(front.isEmpty() ? rear : front);
        }
        List<BleedStep> steps = new ArrayList<>();
        for (int i = 0; i < Math.max(front.size(), rear.size()); i++) {
            PartState one = rear.get(Math.min(i, rear.size() - 1));
            PartState other = front.get(Math.min(i, front.size() - 1));
            steps.add(new BleedStep(List.of(one.name(), other.name()), Math.max(one.wayM(), other.wayM())));
        }
        return List.copyOf(steps);
    }
}
