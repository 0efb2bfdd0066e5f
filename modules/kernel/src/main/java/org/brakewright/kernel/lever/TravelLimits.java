package org.brakewright.kernel.lever;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakewright.kernel.lever.PedalLinkage.Axis;
import org.brakewright.kernel.lever.PedalLinkage.Point;

/**
 * The pedal angles at which a linkage goes over centre or falls short of the axis, in a whole turn from rest.
 *
 * @param overCentre angles in drive direction, from 0 to below a turn, rad
 * @param outOfReach the same, rad
 */
record TravelLimits(List<Double> overCentre, List<Double> outOfReach) {
    private static final double TURN = 2 * Math.PI;

    static TravelLimits of(PedalLinkage linkage) {
        return new TravelLimits(deadCentres(linkage), shortfalls(linkage));
    }

    /** The limit that lies between rest and an angle (rad, plus or minus), the nearer one when both do. */
    Optional<LinkageOutcome> reached(double pedalAngle) {
        double centre = nearest(overCentre, pedalAngle);
        double reach = nearest(outOfReach, pedalAngle);
        if (Math.abs(pedalAngle) < Math.min(Math.abs(centre), Math.abs(reach))) {
            return Optional.empty();
        }
        return Optional.of(
                Math.abs(centre) <= Math.abs(reach)
                        ? new LinkageOutcome.OverCentre(centre)
                        : new LinkageOutcome.OutOfReach(reach));
    }

    /** First of the angles on the way from rest toward an angle; a whole turn when there is none. */
    private static double nearest(List<Double> angles, double toward) {
        double first = TURN;
        for (double angle : angles) {
            first = Math.min(first, toward >= 0 ? angle : TURN - angle);
        }
        return toward >= 0 ? first : -first;
    }

    private static List<Double> deadCentres(PedalLinkage linkage) {
        double crank = linkage.pin().distance();
        double rod = linkage.pushrodLength();
        List<Double> angles = new ArrayList<>();
        for (double reach : new double[] {crank + rod, Math.abs(crank - rod)}) {
            for (Point socket : onAxis(linkage.axis(), reach)) {
                boolean folded = reach < crank + rod;
                double pinAngle = socket.angle() + (folded && rod > crank ? Math.PI : 0);
                Point pin = new Point(crank * Math.cos(pinAngle), crank * Math.sin(pinAngle));
                if (linkage.axis().along(socket) > linkage.axis().along(pin)) {
                    angles.add(fromRest(linkage, pinAngle));
                }
            }
        }
        return angles;
    }

    private static List<Point> onAxis(Axis axis, double reach) {
        Point pivot = new Point(0, 0);
        double halfSquared = reach * reach - axis.offset(pivot) * axis.offset(pivot);
        if (reach == 0 || halfSquared < 0) {
            return List.of();
        }
        double half = Math.sqrt(halfSquared);
        return List.of(axis.at(axis.along(pivot) - half), axis.at(axis.along(pivot) + half));
    }

    /** The pin's distance from the axis is crank x sin(its angle to the axis) + that of the pivot. */
    private static List<Double> shortfalls(PedalLinkage linkage) {
        double crank = linkage.pin().distance();
        List<Double> angles = new ArrayList<>();
        for (double offset : new double[] {-linkage.pushrodLength(), linkage.pushrodLength()}) {
            double sin = (offset - linkage.axis().offset(new Point(0, 0))) / crank;
            if (Math.abs(sin) <= 1) {
                double direction = linkage.axis().direction();
                angles.add(fromRest(linkage, direction + Math.asin(sin)));
                angles.add(fromRest(linkage, direction + Math.PI - Math.asin(sin)));
            }
        }
        return angles;
    }

    private static double fromRest(PedalLinkage linkage, double pinAngle) {
        double turned = (linkage.sense() * (pinAngle - linkage.pin().angle())) % TURN;
        return turned < 0 ? turned + TURN : turned;
    }
}
