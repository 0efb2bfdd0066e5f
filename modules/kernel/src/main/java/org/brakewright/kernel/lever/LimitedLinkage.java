package org.brakewright.kernel.lever;

import java.util.Optional;
import org.brakewright.kernel.lever.PedalLinkage.Axis;
import org.brakewright.kernel.lever.PedalLinkage.Point;

/** A pedal linkage with the angles at which it goes over centre or falls short, found once for many positions. */
public final class LimitedLinkage {
    /** Of a socket position found back from an angle, m. */
    private static final double SAME = 1e-9;

    private final PedalLinkage linkage;
    private final TravelLimits limits;

    private LimitedLinkage(PedalLinkage linkage) {
        this.linkage = linkage;
        this.limits = TravelLimits.of(linkage);
    }

    /** A linkage with its limits. */
    public static LimitedLinkage of(PedalLinkage linkage) {
        return new LimitedLinkage(linkage);
    }

    /** Distance of the pad from the pivot, m. */
    public double padDistance() {
        return linkage.pad().distance();
    }

    /** The linkage at a pedal angle (rad) from rest, plus drives the piston ahead, less than a turn. */
    public LinkageOutcome at(double pedalAngle) {
        return limits.reached(pedalAngle).orElseGet(() -> linkage.position(pedalAngle));
    }

    /** The linkage when the piston has advanced by a travel (m); empty where it never does. */
    public Optional<LinkagePosition> atRodTravel(double rodTravel) {
        Axis axis = linkage.axis();
        Point pin = linkage.pin();
        Point atRest = axis.at(linkage.socketAlong(pin));
        Point socket = axis.at(linkage.socketAlong(pin) + rodTravel);
        double crank = pin.distance();
        double reach = socket.distance();
        double rod = linkage.pushrodLength();
        double cos = (crank * crank + reach * reach - rod * rod) / (2 * crank * reach);
        if (!(Math.abs(cos) <= 1)) {
            return Optional.empty();
        }
        double side = Math.signum(atRest.x() * pin.y() - atRest.y() * pin.x());
        double turned = socket.angle() + side * Math.acos(cos) - pin.angle();
        double angle = linkage.sense() * Math.IEEEremainder(turned, 2 * Math.PI);
        return at(angle) instanceof LinkagePosition found && Math.abs(found.rodTravel() - rodTravel) < SAME
                ? Optional.of(found)
                : Optional.empty();
    }
}
