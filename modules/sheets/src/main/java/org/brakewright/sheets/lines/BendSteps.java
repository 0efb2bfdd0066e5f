package org.brakewright.sheets.lines;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.lines.TubeState;
import org.brakewright.analysis.lines.TubeState.BendRow;
import org.brakewright.model.resolved.ResolvedLines.Spot;

/** A tube after each of its bends: what is bent lies as in the car, the rest still runs straight on. */
final class BendSteps {
    private BendSteps() {}

    /**
     * A tube half made.
     *
     * @param bent its middle from the start to the end of the last bend made
     * @param straight from there to its end
     */
    record Step(List<Spot> bent, List<Spot> straight) {
        Step {
            bent = List.copyOf(bent);
            straight = List.copyOf(straight);
        }
    }

    /** One step a bend, in order; one with nothing bent for a straight tube. */
    static List<Step> of(TubeState tube) {
        List<Step> steps = new ArrayList<>();
        double along = 0;
        for (int bend = 0; bend < tube.bends().size(); bend++) {
            BendRow row = tube.bends().get(bend);
            along += row.straightM() + row.radiusM() * row.angleRad();
            steps.add(step(tube, bend, along));
        }
        return steps.isEmpty() ? List.of(new Step(List.of(), tube.points())) : List.copyOf(steps);
    }

    /** After bend number {@code bend}, whose end lies {@code along} (m) the tube; the next leg gives the way on. */
    private static Step step(TubeState tube, int bend, double along) {
        Spot corner = tube.points().get(bend + 1);
        Spot next = tube.points().get(bend + 2);
        Spot end = toward(corner, next, setBack(tube.bends().get(bend)));
        List<Spot> bent = before(tube.middle(), end, along);
        bent.add(end);
        double left = tube.developedM() - along;
        double leg = corner.to(next) - setBack(tube.bends().get(bend));
        return new Step(bent, List.of(end, along(end, next, left / leg)));
    }

    /** From a corner to where its bend ends, m. */
    private static double setBack(BendRow row) {
        return row.radiusM() * Math.tan(row.angleRad() / 2);
    }

    private static Spot toward(Spot from, Spot to, double by) {
        return along(from, to, by / from.to(to));
    }

    private static Spot along(Spot from, Spot to, double share) {
        return new Spot(
                from.x() + share * (to.x() - from.x()),
                from.y() + share * (to.y() - from.y()),
                from.z() + share * (to.z() - from.z()));
    }

    /** Points of a chain as far as a bend's end, which lies near {@code along} (m): chords are a little shorter. */
    private static List<Spot> before(List<Spot> chain, Spot end, double along) {
        List<Spot> points = new ArrayList<>();
        int nearest = nearest(chain, end, along);
        points.addAll(chain.subList(0, nearest + (chain.get(nearest).to(end) < 1e-9 ? 0 : 1)));
        return points;
    }

    private static int nearest(List<Spot> chain, Spot end, double along) {
        int best = 0;
        double gone = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < chain.size(); i++) {
            gone += i == 0 ? 0 : chain.get(i).to(chain.get(i - 1));
            // A tube may pass the same place twice: only what lies about that far along counts.
            double away = chain.get(i).to(end) + Math.abs(gone - along) / 2;
            if (away < least) {
                least = away;
                best = i;
            }
        }
        return best;
    }
}
