package org.brakewright.analysis;

import org.brakewright.model.resolved.ResolvedMechanism;

/**
 * A slider-crank whose axis lies along x and whose pad is pushed forward below the pivot.
 *
 * @param points at rest
 */
record LinkageByHand(ResolvedMechanism points) {
    double padArm() {
        return Math.hypot(points.pad().x(), points.pad().y());
    }

    /** Advance of the rod's far end along x when the pedal has turned forward. */
    double advance(double angle) {
        return socket(angle) - socket(0);
    }

    private double socket(double angle) {
        double x = points.pin().x() * Math.cos(angle) - points.pin().y() * Math.sin(angle);
        double y = points.pin().x() * Math.sin(angle) + points.pin().y() * Math.cos(angle);
        double dx = points.socket().x() - points.pin().x();
        double dy = points.socket().y() - points.pin().y();
        double off = points.socket().y() - y;
        return x + Math.sqrt(dx * dx + dy * dy - off * off);
    }
}
