package org.brakewright.app.scene;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.app.scene.SceneView.Body;
import org.brakewright.app.scene.SceneView.Group;
import org.brakewright.app.scene.SceneView.NamedPlace;
import org.brakewright.app.scene.SceneView.Shape;
import org.brakewright.app.scene.SceneView.Tone;
import org.brakewright.model.resolved.ResolvedMechanism;
import org.brakewright.model.resolved.ResolvedMechanism.Point;
import org.brakewright.model.resolved.ResolvedMount.PedalPoints;
import org.brakewright.model.resolved.ResolvedMount.Place;

/** The brake pedal at rest: arm, pad and pushrod between the points that the builder measured. */
final class PedalBodies {
    private static final double ARM = 0.006;
    private static final double ROD = 0.004;
    private static final double PIVOT = 0.01;
    private static final double PAD = 0.025;
    private static final double PAD_THICKNESS = 0.006;
    private static final String SIZES = " Thickness as drawn is not measured.";

    private final List<Body> bodies = new ArrayList<>();
    private final List<NamedPlace> places = new ArrayList<>();

    private PedalBodies(Place pivot, Place pin, Place pad, Place socket) {
        rod("pedal:arm", "brake pedal arm", ARM, "From the pivot to the middle of the pad." + SIZES, pivot, pin, pad);
        rod("pedal:rod", "pushrod", ROD, "From the pin to its end in the master." + SIZES, pin, socket);
        rod(
                "pedal:pivot",
                "pedal pivot",
                PIVOT,
                "The pedal swings about it." + SIZES,
                across(pivot, -0.02),
                across(pivot, 0.02));
        Place off = square(pivot, pad);
        rod(
                "pedal:pad",
                "brake pad",
                PAD,
                "Square to the way in which it moves. Its own size is not told: drawn as a disc.",
                pad,
                new Place(
                        pad.x() + PAD_THICKNESS * off.x(),
                        pad.y() + PAD_THICKNESS * off.y(),
                        pad.z() + PAD_THICKNESS * off.z()));
        place("pedal pivot", pivot);
        place("pushrod pin", pin);
        place("middle of the brake pad", pad);
        place("pushrod end in the master", socket);
    }

    /** A pedal whose mount is told, moved to the zero of the car. */
    static PedalBodies of(PedalPoints points, Place zero) {
        return new PedalBodies(
                Placing.moved(points.pivot(), zero),
                Placing.moved(points.pin(), zero),
                Placing.moved(points.pad(), zero),
                Placing.moved(points.socket(), zero));
    }

    /** A pedal alone, its pivot the zero. */
    static PedalBodies alone(ResolvedMechanism mechanism) {
        return new PedalBodies(
                new Place(0, 0, 0), place(mechanism.pin()), place(mechanism.pad()), place(mechanism.socket()));
    }

    List<Body> bodies() {
        return List.copyOf(bodies);
    }

    List<NamedPlace> places() {
        return List.copyOf(places);
    }

    private static Place place(Point point) {
        return new Place(point.x(), 0, point.y());
    }

    private static Place across(Place place, double by) {
        return new Place(place.x(), place.y() + by, place.z());
    }

    /** Toward the foot: square to the arm in the pedal's plane, unit length. */
    private static Place square(Place pivot, Place pad) {
        double dx = pad.x() - pivot.x();
        double dz = pad.z() - pivot.z();
        double length = Math.hypot(dx, dz);
        double toward = dz < 0 ? 1 : -1;
        return new Place(toward * dz / length, 0, -toward * dx / length);
    }

    private void rod(String key, String name, double radius, String note, Place... points) {
        bodies.add(new Body(
                key,
                name,
                Group.PEDALS,
                Shape.ROD,
                Spots.of(points),
                Spots.millimetre(radius),
                List.of(),
                Tone.METAL,
                note));
    }

    private void place(String name, Place at) {
        places.add(new NamedPlace(name, Spots.of(at)));
    }
}
