package org.brakewright.sheets.pedal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakewright.drawing.Align;
import org.brakewright.drawing.Arc;
import org.brakewright.drawing.Circle;
import org.brakewright.drawing.Dimension;
import org.brakewright.drawing.Line;
import org.brakewright.drawing.Point;
import org.brakewright.drawing.Shape;
import org.brakewright.drawing.Stroke;
import org.brakewright.drawing.Text;
import org.brakewright.model.resolved.ResolvedMechanism;
import org.brakewright.sheets.Measure;

/** A pedal's points from the side, its pivot in the origin. */
final class ArmPicture {
    static final ResolvedMechanism.Point PIVOT = new ResolvedMechanism.Point(0, 0);

    private static final double CROSS = 6;
    private static final double BOSS = 5;
    private static final double PAD = 25;
    private static final double AXIS = 35;
    private static final double WORDS = 2.5;

    private final ResolvedMechanism mechanism;
    private final Point pad;
    private final Point pin;
    private final Point socket;

    ArmPicture(ResolvedMechanism mechanism) {
        this.mechanism = mechanism;
        this.pad = at(mechanism.pad());
        this.pin = at(mechanism.pin());
        this.socket = at(mechanism.socket());
    }

    /** The pedal at rest, its pad's arc to the stop (m), and where the pad stands at the hard stop (m). */
    List<Shape> shapes(double toStop, Optional<Double> hardStop) {
        var shapes = new ArrayList<Shape>();
        cross(new Point(0, 0), "pivot", shapes);
        cross(pin, "pin", shapes);
        arm(shapes);
        rod(shapes);
        double radius = pad.distance(at(PIVOT));
        double rest = at(PIVOT).direction(pad);
        double stop = rest + turn(toStop, radius);
        shapes.add(new Arc(at(PIVOT), radius, Math.min(rest, stop), Math.max(rest, stop), Stroke.CENTRE));
        pad(rest, "at rest", shapes);
        hardStop.ifPresent(travel -> pad(rest + turn(travel, radius), "hard stop", shapes));
        pad(stop, "at its stop", shapes);
        return shapes;
    }

    /** Degrees that the pad turns when the foot pushes it forward by a length (m) along its arc. */
    private double turn(double travel, double radius) {
        double forward = mechanism.pad().y() <= 0 ? 1 : -1;
        return forward * Math.toDegrees(Measure.mm(travel) / radius);
    }

    private void arm(List<Shape> shapes) {
        shapes.add(new Line(at(PIVOT), pad, Stroke.OUTLINE));
        shapes.add(new Line(at(PIVOT), pin, Stroke.OUTLINE));
        shapes.add(size(at(PIVOT), pad, -12));
        shapes.add(size(at(PIVOT), pin, 14));
    }

    private void rod(List<Shape> shapes) {
        double along = Math.toDegrees(mechanism.axisDirection());
        shapes.add(new Line(pin, socket, Stroke.HIDDEN));
        shapes.add(new Line(socket.polar(-CROSS, along), socket.polar(AXIS, along), Stroke.CENTRE));
        shapes.add(Text.of(socket.polar(AXIS + 2, along), WORDS, "axis of the master"));
        shapes.add(size(pin, socket, 14));
    }

    private static void cross(Point at, String name, List<Shape> shapes) {
        shapes.add(new Circle(at, BOSS, Stroke.CENTRE));
        shapes.add(new Line(at.plus(-CROSS, 0), at.plus(CROSS, 0), Stroke.HOLE));
        shapes.add(new Line(at.plus(0, -CROSS), at.plus(0, CROSS), Stroke.HOLE));
        shapes.add(Text.of(at.plus(-CROSS - 2, CROSS), WORDS, name).aligned(Align.RIGHT));
    }

    private void pad(double direction, String name, List<Shape> shapes) {
        double radius = pad.distance(at(PIVOT));
        Point middle = at(PIVOT).polar(radius, direction);
        shapes.add(new Line(middle.polar(-PAD, direction), middle.polar(PAD, direction), Stroke.OUTLINE));
        shapes.add(Text.of(middle.polar(PAD + 4, direction), WORDS, name).aligned(Align.CENTER));
    }

    private static Dimension.Linear size(Point from, Point to, double offset) {
        return new Dimension.Linear(from, to, Dimension.Along.BOTH, offset, Measure.fixed(from.distance(to), 1));
    }

    private static Point at(ResolvedMechanism.Point point) {
        return Measure.place(point.x(), point.y());
    }
}
