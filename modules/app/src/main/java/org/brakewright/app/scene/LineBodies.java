package org.brakewright.app.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.brakewright.analysis.lines.LinesState;
import org.brakewright.analysis.lines.TubeState;
import org.brakewright.app.scene.SceneView.Body;
import org.brakewright.app.scene.SceneView.Group;
import org.brakewright.app.scene.SceneView.NamedPlace;
import org.brakewright.app.scene.SceneView.Shape;
import org.brakewright.app.scene.SceneView.Tone;
import org.brakewright.app.words.Show;
import org.brakewright.model.lines.Circuit;
import org.brakewright.model.resolved.ResolvedLines;
import org.brakewright.model.resolved.ResolvedLines.Spot;
import org.brakewright.quantity.Dimension;

/** Tubes as they are bent, hoses, the parts that they join, and what they keep clear of. */
final class LineBodies {
    /** Drawn size of a part whose own size is not told, m. */
    private static final double PART = 0.012;

    private static final double HOSE = 0.005;

    private final Show show;
    private final List<Body> bodies = new ArrayList<>();
    private final List<NamedPlace> places = new ArrayList<>();

    LineBodies(Show show, ResolvedLines lines, LinesState state) {
        this.show = show;
        state.tubes().forEach(this::tube);
        lines.hoses().forEach(hose -> hose(hose, lines, state));
        state.parts().forEach(this::part);
        lines.obstacles().forEach(obstacle -> bodies.add(ObstacleBody.of(obstacle, Group.SURROUNDINGS)));
    }

    List<Body> bodies() {
        return List.copyOf(bodies);
    }

    List<NamedPlace> places() {
        return List.copyOf(places);
    }

    private void tube(TubeState tube) {
        add(new Body(
                key("tube", tube.name()),
                tube.name(),
                Group.LINES,
                Shape.ROD,
                Spots.of(tube.middle()),
                Spots.millimetre(tube.outsideDiameterM() / 2),
                List.of(),
                tone(tube.circuit()),
                note(tube)));
        for (int i = 0; i < tube.points().size(); i++) {
            place(
                    tube.name() + (i == 0 ? ", start" : i == tube.points().size() - 1 ? ", end" : ", corner " + i),
                    tube.points().get(i));
        }
    }

    private String note(TubeState tube) {
        int bends = tube.bends().size();
        String nearest = tube.gaps().isEmpty()
                ? ""
                : "; nearest to " + tube.gaps().getFirst().obstacle() + " with "
                        + show.value(tube.gaps().getFirst().gapM(), Dimension.LENGTH);
        return "Tube of " + show.value(tube.outsideDiameterM(), Dimension.LENGTH) + ", "
                + show.value(tube.developedM(), Dimension.LENGTH) + " long, "
                + (bends == 1 ? "1 bend" : bends + " bends") + nearest + ".";
    }

    private void hose(ResolvedLines.Hose hose, ResolvedLines lines, LinesState state) {
        Circuit circuit = state.hoses().stream()
                .filter(each -> each.name().equals(hose.name()))
                .map(LinesState.HoseState::circuit)
                .findFirst()
                .orElse(Circuit.FRONT);
        add(new Body(
                key("hose", hose.name()),
                hose.name(),
                Group.LINES,
                Shape.ROD,
                Spots.of(at(lines, hose.start().to()), at(lines, hose.end().to())),
                Spots.millimetre(HOSE),
                List.of(),
                tone(circuit),
                "Hose, " + show.value(hose.length(), Dimension.LENGTH) + " free, drawn straight and "
                        + show.value(2 * HOSE, Dimension.LENGTH) + " thick."));
    }

    private static Spot at(ResolvedLines lines, String part) {
        return lines.parts().stream()
                .filter(each -> each.name().equals(part))
                .map(ResolvedLines.Part::at)
                .findFirst()
                .orElseThrow();
    }

    private void part(LinesState.PartState part) {
        add(new Body(
                key("part", part.name()),
                part.name(),
                Group.LINES,
                Shape.BALL,
                Spots.of(part.at()),
                Spots.millimetre(PART),
                List.of(),
                tone(part.circuit()),
                "Its size is not told: drawn as a ball of " + show.value(2 * PART, Dimension.LENGTH)
                        + " about the port"
                        + (part.bleeder() ? "; it has a bleeder." : ".")));
        place(part.name(), part.at());
    }

    private void add(Body body) {
        bodies.add(body);
    }

    private void place(String name, Spot at) {
        places.add(new NamedPlace(name, Spots.of(at)));
    }

    private static String key(String kind, String name) {
        return kind + ":" + name.toLowerCase(Locale.ROOT);
    }

    private static Tone tone(Circuit circuit) {
        return switch (circuit) {
            case FRONT -> Tone.FRONT;
            case REAR -> Tone.REAR;
            case CLUTCH -> Tone.CLUTCH;
        };
    }
}
