package org.brakewright.analysis.footwell;

import java.util.List;
import org.brakewright.kernel.gap.ConvexBody;
import org.brakewright.kernel.gap.Point;
import org.brakewright.kernel.gap.Swing;
import org.brakewright.model.resolved.ResolvedFootwell.FootPad;
import org.brakewright.model.resolved.ResolvedMount.Place;

/** A pedal that swings about its pivot across the car. */
record PadSwing(FootPad pad, double arm) {
    /** Half the thickness of a pad, m. */
    private static final double HALF_PAD = 3e-3;

    private static final Point ACROSS = new Point(0, 1, 0);

    private double x() {
        return pad.pad().x() - pad.pivot().x();
    }

    private double z() {
        return pad.pad().z() - pad.pivot().z();
    }

    private double radius() {
        return Math.hypot(x(), z());
    }

    /** The turn about the axis across for a travel of the pad, rad: forward, and down where the arm lies. */
    double angle(double travel) {
        double sense = z() + 0.3 * x() >= 0 ? 1 : -1;
        return sense * travel / radius();
    }

    /** The travel of the pad at an angle, m. */
    double travel(double angle) {
        return Math.abs(angle) * radius();
    }

    /** The middle of the pad after some travel. */
    Place at(double travel) {
        double angle = angle(travel);
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        return new Place(
                pad.pivot().x() + x() * cos + z() * sin,
                pad.pad().y(),
                pad.pivot().z() - x() * sin + z() * cos);
    }

    /** Pad and arm, each as a body that swings. */
    List<Swing> bodies() {
        Point pivot = point(pad.pivot());
        Point middle = point(pad.pad());
        Point down = new Point(x() / radius(), 0, z() / radius()).times(pad.height() / 2);
        Point aside = ACROSS.times(pad.breadth() / 2);
        ConvexBody plate = new ConvexBody(
                List.of(
                        middle.plus(down).plus(aside),
                        middle.plus(down).minus(aside),
                        middle.minus(down).plus(aside),
                        middle.minus(down).minus(aside)),
                HALF_PAD);
        Point top = new Point(pivot.x(), middle.y(), pivot.z());
        ConvexBody bar = new ConvexBody(List.of(top, middle), arm / 2);
        return List.of(new Swing(plate, pivot, ACROSS), new Swing(bar, pivot, ACROSS));
    }

    /** The same pedal further left, m. */
    PadSwing shifted(double left) {
        return new PadSwing(
                new FootPad(pad.breadth(), pad.height(), left(pad.pivot(), left), left(pad.pad(), left), pad.travel()),
                arm);
    }

    private static Place left(Place place, double by) {
        return new Place(place.x(), place.y() + by, place.z());
    }

    private static Point point(Place place) {
        return new Point(place.x(), place.y(), place.z());
    }
}
