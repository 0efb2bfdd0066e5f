package org.brakewright.kernel.lever;

import java.util.OptionalDouble;

/**
 * A pedal in its own plane: it turns about the origin and drives, through a pushrod with a pin at both ends, a piston
 * that slides on the master's axis. Coordinates in m, angles in rad, anticlockwise positive.
 *
 * <p>Maintainer's note. It is a slider-crank. The pin P turns about the origin; its distance from the axis is
 * h = (P - A).n, and the rod's socket stands at s = (P - A).u + sqrt(L^2 - h^2) along the axis, ahead of the pin. Then
 * ds/dangle = P'.u + tan(lean) P'.n with P' = dP/dangle and tan(lean) = -h/sqrt(L^2 - h^2). The piston turns back where
 * the rod's line passes through the pivot, so that the socket lies at L + r or |L - r| from it; the rod falls short
 * where |h| = L. Both give the limiting angles in closed form ({@link TravelLimits}).
 *
 * @param pad centre of the pad at rest
 * @param pin of the pushrod in the pedal at rest
 * @param axis of the master
 * @param pushrodLength pin to socket, m
 */
public record PedalLinkage(Point pad, Point pin, Axis axis, double pushrodLength) {
    /** Of a socket position found back from an angle, m. */
    private static final double SAME = 1e-9;

    public PedalLinkage {
        Demand.positive("pushrodLength", pushrodLength);
        Demand.positive("pad distance from the pivot", pad.distance());
        Demand.positive("pin distance from the pivot", pin.distance());
        double offset = axis.offset(pin);
        Demand.within(
                "pin distance from the axis", offset, Math.abs(offset) < pushrodLength, "less than pushrodLength");
        double arm = advance(pin, axis, pushrodLength);
        Demand.within("pushrod arm", arm, Math.abs(arm) > SAME, "not 0: the rod points at the pivot at rest");
    }

    /**
     * A point of the plane.
     *
     * @param x m
     * @param y m
     */
    public record Point(double x, double y) {
        public Point {
            Demand.within("x", x, !Double.isNaN(x), "a number");
            Demand.within("y", y, !Double.isNaN(y), "a number");
        }

        /** Distance from the pivot, m. */
        public double distance() {
            return Math.hypot(x, y);
        }

        double angle() {
            return Math.atan2(y, x);
        }

        Point turned(double angle) {
            double cos = Math.cos(angle);
            double sin = Math.sin(angle);
            return new Point(x * cos - y * sin, x * sin + y * cos);
        }
    }

    /**
     * The line on which the piston slides.
     *
     * @param through any point of it
     * @param direction in which the piston advances, rad from the x axis
     */
    public record Axis(Point through, double direction) {
        public Axis {
            Demand.within("direction", direction, !Double.isNaN(direction), "a number");
        }

        double along(Point point) {
            return (point.x() - through.x()) * Math.cos(direction) + (point.y() - through.y()) * Math.sin(direction);
        }

        /** Distance to the left of the axis. */
        double offset(Point point) {
            return (point.y() - through.y()) * Math.cos(direction) - (point.x() - through.x()) * Math.sin(direction);
        }

        Point at(double along) {
            return new Point(through.x() + along * Math.cos(direction), through.y() + along * Math.sin(direction));
        }
    }

    /**
     * The linkage at a pedal angle.
     *
     * @param pedalAngle from rest, plus drives the piston ahead, less than a turn, rad
     */
    public LinkageOutcome at(double pedalAngle) {
        return at(pedalAngle, limits());
    }

    /** The same with the limits of this linkage, found once. */
    public LinkageOutcome at(double pedalAngle, TravelLimits limits) {
        return limits.reached(pedalAngle).orElseGet(() -> position(pedalAngle));
    }

    /** Where this linkage goes over centre or falls short. */
    public TravelLimits limits() {
        return TravelLimits.of(this);
    }

    /** Pedal angle (rad) at which the piston has advanced by a travel (m); empty where it never does. */
    public OptionalDouble angleForRodTravel(double rodTravel) {
        return angleForRodTravel(rodTravel, limits());
    }

    /** The same with the limits of this linkage, found once. */
    public OptionalDouble angleForRodTravel(double rodTravel, TravelLimits limits) {
        Point socket = axis.at(socketAlong(pin) + rodTravel);
        double reach = socket.distance();
        double cos = (square(pin.distance()) + square(reach) - square(pushrodLength)) / (2 * pin.distance() * reach);
        if (!(Math.abs(cos) <= 1)) {
            return OptionalDouble.empty();
        }
        Point atRest = axis.at(socketAlong(pin));
        double side = Math.signum(atRest.x() * pin.y() - atRest.y() * pin.x());
        double turned = socket.angle() + side * Math.acos(cos) - pin.angle();
        double angle = sense() * Math.IEEEremainder(turned, 2 * Math.PI);
        return at(angle, limits) instanceof LinkagePosition found && Math.abs(found.rodTravel() - rodTravel) < SAME
                ? OptionalDouble.of(angle)
                : OptionalDouble.empty();
    }

    /** Plus 1 when the pedal turns anticlockwise to drive the piston ahead, minus 1 when clockwise. */
    double sense() {
        return Math.signum(advance(pin, axis, pushrodLength));
    }

    private LinkagePosition position(double pedalAngle) {
        Point turned = pin.turned(sense() * pedalAngle);
        double rodAngle = lean(turned, axis, pushrodLength);
        return new LinkagePosition(
                pedalAngle,
                pad.distance() * pedalAngle,
                socketAlong(turned) - socketAlong(pin),
                pad.distance() / (sense() * advance(turned, axis, pushrodLength)),
                rodAngle,
                Math.abs(Math.tan(rodAngle)));
    }

    private double socketAlong(Point turnedPin) {
        return axis.along(turnedPin) + Math.sqrt(square(pushrodLength) - square(axis.offset(turnedPin)));
    }

    private static double lean(Point turnedPin, Axis axis, double length) {
        return -Math.asin(axis.offset(turnedPin) / length);
    }

    /** Advance of the socket per angle (m/rad, anticlockwise): the pin's velocity along the rod over cos(lean). */
    private static double advance(Point turnedPin, Axis axis, double length) {
        double lean = lean(turnedPin, axis, length);
        double rod = axis.direction() + lean;
        return (turnedPin.x() * Math.sin(rod) - turnedPin.y() * Math.cos(rod)) / Math.cos(lean);
    }

    private static double square(double value) {
        return value * value;
    }
}
