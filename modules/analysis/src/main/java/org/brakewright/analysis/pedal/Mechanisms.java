package org.brakewright.analysis.pedal;

import org.brakewright.kernel.lever.LinkagePosition;
import org.brakewright.kernel.lever.PedalLinkage;
import org.brakewright.kernel.lever.PedalLinkage.Axis;
import org.brakewright.model.resolved.ResolvedMechanism;
import org.brakewright.model.resolved.ResolvedMechanism.Point;

/** What a pedal's points say about its linkage at rest. */
public final class Mechanisms {
    private Mechanisms() {}

    /** The linkage of a mechanism of which {@link #rodAlongAxis} and {@link #rodArm} are positive. */
    public static PedalLinkage linkage(ResolvedMechanism mechanism) {
        return new PedalLinkage(
                point(mechanism.pad()),
                point(mechanism.pin()),
                new Axis(point(mechanism.socket()), mechanism.axisDirection()),
                rodLength(mechanism));
    }

    /** Ratio with the pedal at rest. */
    public static double ratioAtRest(ResolvedMechanism mechanism) {
        return switch (linkage(mechanism).at(0)) {
            case LinkagePosition rest -> rest.ratio();
            default -> throw new IllegalArgumentException("a linkage stands at rest: " + mechanism);
        };
    }

    /** Distance of a point from the pivot, m. */
    public static double distance(Point point) {
        return Math.hypot(point.x(), point.y());
    }

    /** How far (m) the rod's far end lies ahead of its pin in the direction in which the piston moves. */
    public static double rodAlongAxis(ResolvedMechanism mechanism) {
        return (mechanism.socket().x() - mechanism.pin().x()) * Math.cos(mechanism.axisDirection())
                + (mechanism.socket().y() - mechanism.pin().y()) * Math.sin(mechanism.axisDirection());
    }

    /** Arm (m) of the rod about the pivot; plus when a pad that is pushed forward pushes the rod. */
    public static double rodArm(ResolvedMechanism mechanism) {
        Point pin = mechanism.pin();
        Point socket = mechanism.socket();
        double turning = (socket.x() - pin.x()) * -pin.y() + (socket.y() - pin.y()) * pin.x();
        double foot = mechanism.pad().y() <= 0 ? 1 : -1;
        return foot * turning / rodLength(mechanism);
    }

    /** From the pin to the far end, m. */
    static double rodLength(ResolvedMechanism mechanism) {
        return Math.hypot(
                mechanism.socket().x() - mechanism.pin().x(),
                mechanism.socket().y() - mechanism.pin().y());
    }

    private static PedalLinkage.Point point(Point point) {
        return new PedalLinkage.Point(point.x(), point.y());
    }
}
