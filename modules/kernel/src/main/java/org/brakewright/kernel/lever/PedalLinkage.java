package org.brakewright.kernel.lever;

import java.util.Optional;
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
    /** The shortest arm of a rod that does not point at the pivot, m. */
    private static final double SHORTEST = 1e-9;

    public PedalLinkage {
        Demand.positive("pushrodLength", pushrodLength);
        Demand.positive("pad distance from the pivot", pad.distance());
        Demand.positive("pin distance from the pivot", pin.distance());
        double offset = axis.offset(pin);
        Demand.within(
                "pin distance from the axis", offset, Math.abs(offset) < pushrodLength, "less than pushrodLength");
        double arm = advance(pin, axis, slant(pin, axis, pushrodLength));
        Demand.within("pushrod arm", arm, Math.abs(arm) > SHORTEST, "not 0: the rod points at the pivot at rest");
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
        return LimitedLinkage.of(this).at(pedalAngle);
    }

    /** Pedal angle (rad) at which the piston has advanced by a travel (m); empty where it never does. */
    public OptionalDouble angleForRodTravel(double rodTravel) {
        Optional<LinkagePosition> found = LimitedLinkage.of(this).atRodTravel(rodTravel);
        return found.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(found.get().pedalAngle());
    }

    /** Plus 1 when the pedal turns anticlockwise to drive the piston ahead, minus 1 when clockwise. */
    double sense() {
        return Math.signum(advance(pin, axis, slant(pin, axis, pushrodLength)));
    }

    LinkagePosition position(double pedalAngle) {
        Point turned = pin.turned(sense() * pedalAngle);
        double slant = slant(turned, axis, pushrodLength);
        return new LinkagePosition(
                pedalAngle,
                pad.distance() * pedalAngle,
                socketAlong(turned) - socketAlong(pin),
                pad.distance() / (sense() * advance(turned, axis, slant)),
                Math.atan(slant),
                Math.abs(slant));
    }

    double socketAlong(Point turnedPin) {
        return axis.along(turnedPin) + level(turnedPin, axis, pushrodLength);
    }

    /** Length of the rod along the axis. */
    private static double level(Point turnedPin, Axis axis, double length) {
        double offset = axis.offset(turnedPin);
        return Math.sqrt(length * length - offset * offset);
    }

    /** Tangent of the rod's lean. */
    private static double slant(Point turnedPin, Axis axis, double length) {
        return -axis.offset(turnedPin) / level(turnedPin, axis, length);
    }

    /** Advance of the socket per angle (m/rad, anticlockwise): P'.u + slant P'.n. */
    private static double advance(Point turnedPin, Axis axis, double slant) {
        double cos = Math.cos(axis.direction());
        double sin = Math.sin(axis.direction());
        double along = turnedPin.x() * sin - turnedPin.y() * cos;
        double across = turnedPin.x() * cos + turnedPin.y() * sin;
        return along + slant * across;
    }
}
