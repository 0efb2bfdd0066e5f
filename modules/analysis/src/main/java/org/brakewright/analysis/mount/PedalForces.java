package org.brakewright.analysis.mount;

import org.brakewright.kernel.structure.Vector3;
import org.brakewright.kernel.structure.Wrench;
import org.brakewright.model.resolved.ResolvedMount.PedalPoints;

/**
 * What a foot of 1 N does to the mount through the pedal, by statics alone: the rod is pushed by the ratio, the pivot
 * takes what is left. Friction is left out, which lies on the safe side for the flange.
 *
 * @param foot direction of the foot: square to the pad's arm, forward
 * @param ratio thrust over foot force
 * @param rod direction in which the rod pushes
 */
record PedalForces(Vector3 pivot, Vector3 pad, Vector3 pin, Vector3 socket, Vector3 foot, double ratio, Vector3 rod) {

    /** Of a pedal as it is drawn. */
    static PedalForces of(PedalPoints points) {
        Vector3 pivot = PanelFrame.vector(points.pivot());
        Vector3 pad = PanelFrame.vector(points.pad());
        Vector3 pin = PanelFrame.vector(points.pin());
        Vector3 socket = PanelFrame.vector(points.socket());
        Vector3 arm = pad.minus(pivot);
        double length = Math.hypot(arm.x(), arm.z());
        double sense = arm.z() > 0 ? 1 : -1;
        Vector3 foot = new Vector3(sense * arm.z() / length, 0, -sense * arm.x() / length);
        Vector3 along = socket.minus(pin);
        Vector3 rod = along.times(1 / along.length());
        double ratio = about(arm, foot) / about(pin.minus(pivot), rod);
        return new PedalForces(pivot, pad, pin, socket, foot, ratio, rod);
    }

    /** The same pedal with its pin, and the rod with it, moved along its arm until the ratio is another. */
    PedalForces withRatio(double wanted) {
        Vector3 moved = pivot.plus(pin.minus(pivot).times(ratio / wanted));
        return new PedalForces(pivot, pad, moved, socket.plus(moved.minus(pin)), foot, wanted, rod);
    }

    /** Moment about the axis of the pedal, which lies across the car. */
    private static double about(Vector3 arm, Vector3 force) {
        return arm.z() * force.x() - arm.x() * force.z();
    }

    /** On the bracket of the pivot, about the pivot. */
    Wrench atPivot() {
        Vector3 thrust = rod.times(ratio);
        Vector3 moment = pad.minus(pivot).cross(foot).minus(pin.minus(pivot).cross(thrust));
        return new Wrench(foot.minus(thrust), moment);
    }

    /** On the bracket of the masters, about the rod's far end. */
    Wrench atMasters() {
        return Wrench.ofForce(rod.times(ratio));
    }

    /** The same force and moment about another point. */
    static Wrench about(Wrench wrench, Vector3 from, Vector3 to) {
        return new Wrench(wrench.force(), wrench.moment().plus(from.minus(to).cross(wrench.force())));
    }
}
