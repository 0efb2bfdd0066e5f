package org.brakewright.app.scene;

import java.util.List;
import org.brakewright.app.page.PageView;
import org.jspecify.annotations.Nullable;

/**
 * The car's pedals, mount, lines and what is around them, in space; counterpart of {@code ui/src/sceneContract.ts}.
 * Every place is x forward, y left, z up from the builder's zero, mm.
 *
 * @param revision of the build file
 * @param advice what is shown, and what to tell to see more
 * @param scale of the lengths that people read
 * @param bodies to draw
 * @param places to measure from
 * @param pushes that move bodies; empty when no mount is told
 * @param bulges of the panel with more and more on it; null when no mount is told
 */
public record SceneView(
        int revision,
        String advice,
        Scale scale,
        List<Body> bodies,
        List<NamedPlace> places,
        List<Push> pushes,
        PageView.@Nullable Chart bulges) {

    /** What a body belongs to. */
    public enum Group {
        PEDALS,
        MOUNT,
        LINES,
        FOOTWELL,
        SURROUNDINGS
    }

    /** How the points of a body are meant. */
    public enum Shape {
        /** Corners of triangles. */
        MESH,
        /** Middle line of a round bar. */
        ROD,
        /** One point, the middle. */
        BALL,
        /** Two opposite corners, square to the car. */
        BOX
    }

    /** How a body is coloured. */
    public enum Tone {
        METAL,
        FRONT,
        REAR,
        CLUTCH,
        HOT,
        /** Room that is swept or kept free. */
        ROOM
    }

    /**
     * Length in the unit shown.
     *
     * @param symbol of the unit
     * @param perMm of it in a millimetre
     * @param decimals that a tape reads
     */
    public record Scale(String symbol, double perMm, int decimals) {}

    /**
     * A body.
     *
     * @param key for the page
     * @param name for people
     * @param group that is shown or hidden together
     * @param shape how the points are meant
     * @param points x, y, z of each after the other, mm
     * @param radius of rod or ball, mm; 0 for the others
     * @param triangles three points' numbers each; empty but for a mesh
     * @param tone its colour
     * @param note what to know of it
     */
    public record Body(
            String key,
            String name,
            Group group,
            Shape shape,
            List<Double> points,
            double radius,
            List<Integer> triangles,
            Tone tone,
            String note) {}

    /**
     * A place with a name.
     *
     * @param at x, y, z, mm
     */
    public record NamedPlace(String name, List<Double> at) {}

    /**
     * What a push does.
     *
     * @param name for people
     * @param sentence how far the pad moves, and where stress is highest
     * @param moved bodies that move
     * @param highest stress of all, MPa
     * @param worst place of the highest stress, x, y, z, mm
     */
    public record Push(
            String key, String name, String sentence, List<Moved> moved, double highest, List<Double> worst) {}

    /**
     * How a body is moved and stressed.
     *
     * @param body its key
     * @param shifts x, y, z of each of its points, mm
     * @param stresses of each triangle, or of each piece between two points of a rod, MPa
     */
    public record Moved(String body, List<Double> shifts, List<Double> stresses) {}
}
