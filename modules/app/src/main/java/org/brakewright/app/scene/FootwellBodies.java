package org.brakewright.app.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.brakewright.analysis.footwell.FootwellState;
import org.brakewright.analysis.footwell.FootwellState.PadState;
import org.brakewright.app.scene.SceneView.Body;
import org.brakewright.app.scene.SceneView.Group;
import org.brakewright.app.scene.SceneView.NamedPlace;
import org.brakewright.app.scene.SceneView.Shape;
import org.brakewright.app.scene.SceneView.Tone;
import org.brakewright.app.words.Show;
import org.brakewright.model.resolved.ResolvedFootwell;
import org.brakewright.model.resolved.ResolvedMount.Place;
import org.brakewright.quantity.Dimension;

/** Pads at rest and at the end of their travel, their arms, and what stands round them. */
final class FootwellBodies {
    private static final double THICKNESS = 0.006;

    /** Of a box: two triangles a side; corner i lies at the end of an axis where its bit is set. */
    private static final List<Integer> BOX = List.of(
            0, 1, 3, 0, 3, 2, 4, 6, 7, 4, 7, 5, 0, 4, 5, 0, 5, 1, 2, 3, 7, 2, 7, 6, 0, 2, 6, 0, 6, 4, 1, 5, 7, 1, 7, 3);

    private final Show show;
    private final List<Body> bodies = new ArrayList<>();
    private final List<NamedPlace> places = new ArrayList<>();

    FootwellBodies(Show show, ResolvedFootwell footwell, FootwellState state, Set<String> drawn) {
        this.show = show;
        state.pads().forEach(pad -> pad(pad, footwell.arm()));
        footwell.obstacles().stream()
                .filter(obstacle -> !drawn.contains("obstacle:" + obstacle.name()))
                .forEach(obstacle -> bodies.add(ObstacleBody.of(obstacle, Group.FOOTWELL)));
    }

    List<Body> bodies() {
        return List.copyOf(bodies);
    }

    /** Keys of bodies. */
    static Set<String> keys(List<Body> bodies) {
        return bodies.stream().map(Body::key).collect(Collectors.toSet());
    }

    List<NamedPlace> places() {
        return List.copyOf(places);
    }

    private void pad(PadState pad, double arm) {
        String name = pad.which().name().toLowerCase(Locale.ROOT);
        String size =
                show.value(pad.breadthM(), Dimension.LENGTH) + " by " + show.value(pad.heightM(), Dimension.LENGTH);
        plate("footwell:" + name, name + " pad", corners(pad, pad.rest()), Tone.METAL, "At rest, " + size + ".");
        plate(
                "footwell:" + name + ":end",
                name + " pad, end",
                corners(pad, pad.end()),
                Tone.ROOM,
                "At the end of its travel.");
        bodies.add(new Body(
                "footwell:" + name + ":arm",
                name + " arm",
                Group.FOOTWELL,
                Shape.ROD,
                Spots.of(beside(pad.pivot(), pad.rest().y()), pad.rest()),
                Spots.millimetre(arm / 2),
                List.of(),
                Tone.METAL,
                "From its pivot to its pad, drawn as the room that it takes."));
        places.add(new NamedPlace(name + " pad, middle", Spots.of(pad.rest())));
    }

    private void plate(String key, String name, Place[] corners, Tone tone, String note) {
        bodies.add(new Body(key, name, Group.FOOTWELL, Shape.MESH, Spots.of(corners), 0, BOX, tone, note));
    }

    /** Of the pad with its middle at a place, square to its arm. */
    private static Place[] corners(PadState pad, Place at) {
        double x = at.x() - pad.pivot().x();
        double z = at.z() - pad.pivot().z();
        double radius = Math.hypot(x, z);
        double up = pad.heightM() / 2 / radius;
        double off = THICKNESS / 2 / radius;
        Place[] corners = new Place[8];
        for (int i = 0; i < corners.length; i++) {
            double along = ((i & 1) == 0 ? -1 : 1) * up;
            double through = ((i & 2) == 0 ? -1 : 1) * off;
            double across = ((i & 4) == 0 ? -1 : 1) * pad.breadthM() / 2;
            corners[i] = new Place(at.x() + along * x + through * z, at.y() + across, at.z() + along * z - through * x);
        }
        return corners;
    }

    private static Place beside(Place pivot, double left) {
        return new Place(pivot.x(), left, pivot.z());
    }
}
