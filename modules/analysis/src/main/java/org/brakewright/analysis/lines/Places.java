package org.brakewright.analysis.lines;

import org.brakewright.kernel.tubing.Envelope;
import org.brakewright.kernel.tubing.Point;
import org.brakewright.kernel.tubing.Route;
import org.brakewright.model.resolved.ResolvedLines.Obstacle;
import org.brakewright.model.resolved.ResolvedLines.Spot;
import org.brakewright.model.resolved.ResolvedLines.Tube;

/** The build's places as the kernel takes them. */
public final class Places {
    private Places() {}

    /** The middle of a tube. */
    public static Route route(Tube tube) {
        return new Route(tube.points().stream().map(Places::point).toList(), tube.radii());
    }

    /** A point. */
    public static Point point(Spot spot) {
        return new Point(spot.x(), spot.y(), spot.z());
    }

    /** A point of the kernel as the build has it. */
    static Spot spot(Point point) {
        return new Spot(point.x(), point.y(), point.z());
    }

    /** The room of an obstacle. */
    public static Envelope envelope(Obstacle obstacle) {
        Spot a = obstacle.from();
        Spot b = obstacle.to();
        return switch (obstacle.shape()) {
            case SPHERE -> new Envelope.Ball(point(a), obstacle.radius());
            case CYLINDER -> new Envelope.Cylinder(point(a), point(b), obstacle.radius());
            case BOX ->
                new Envelope.Box(
                        new Point(Math.min(a.x(), b.x()), Math.min(a.y(), b.y()), Math.min(a.z(), b.z())),
                        new Point(Math.max(a.x(), b.x()), Math.max(a.y(), b.y()), Math.max(a.z(), b.z())));
        };
    }
}
