package org.brakewright.analysis.resolve;

import java.util.Optional;
import org.brakewright.analysis.pedal.Mechanisms;
import org.brakewright.model.Given;
import org.brakewright.model.pedal.Mechanism;
import org.brakewright.model.pedal.Pedal;
import org.brakewright.model.pedal.PedalMount;
import org.brakewright.model.resolved.ResolvedMechanism;
import org.brakewright.model.resolved.ResolvedMechanism.Point;

/** Completes the pedal's mechanism and refuses one that cannot push its piston. */
final class ResolveMechanism {
    private static final double NEAREST = 0.01;

    private final Values values;
    private final String path;
    private final String ratioPath;

    ResolveMechanism(Values values, String path, String ratioPath) {
        this.values = values;
        this.path = path;
        this.ratioPath = ratioPath;
    }

    /** Empty without a mechanism, and while a plain ratio is tried in its place. */
    Optional<ResolvedMechanism> mechanism(Pedal pedal) {
        Mechanism given = pedal.mechanism();
        return given == null || values.overridden(ratioPath) ? Optional.empty() : complete(given);
    }

    private Optional<ResolvedMechanism> complete(Mechanism given) {
        Point pad = new Point(values.need(given.padForward()), values.need(given.padUp()));
        Point pin = new Point(values.need(given.pinForward()), values.need(given.pinUp()));
        Point socket = new Point(values.need(given.socketForward()), values.need(given.socketUp()));
        double rise = values.take(given.axisRise(), path + ".axis_rise", Defaults.AXIS_RISE);
        double direction = given.mount() == PedalMount.REVERSE ? Math.PI - rise : rise;
        ResolvedMechanism mechanism = new ResolvedMechanism(pad, pin, socket, direction);
        boolean stands = standsAsSaid(given, pad);
        boolean reaches = reaches(given, mechanism);
        return stands && reaches && pushes(given, mechanism) ? Optional.of(mechanism) : Optional.empty();
    }

    private boolean standsAsSaid(Mechanism given, Point pad) {
        if (given.mount() == PedalMount.HUNG && pad.y() >= 0) {
            return refused(
                    "pad_up",
                    given.padUp(),
                    "A hung pedal's pad lies below its pivot.",
                    "a minus value, or another mount");
        }
        if (given.mount() == PedalMount.FLOOR && pad.y() <= 0) {
            return refused(
                    "pad_up",
                    given.padUp(),
                    "A floor pedal's pad stands above its pivot.",
                    "a plus value, or another mount");
        }
        return true;
    }

    private boolean reaches(Mechanism given, ResolvedMechanism mechanism) {
        if (Mechanisms.distance(mechanism.pad()) < NEAREST) {
            return refused("pad_up", given.padUp(), "The pad lies at the pivot.", "at least 10 mm from the pivot");
        }
        if (Mechanisms.distance(mechanism.pin()) < NEAREST) {
            return refused("pin_up", given.pinUp(), "The pin lies at the pivot.", "at least 10 mm from the pivot");
        }
        if (Mechanisms.rodAlongAxis(mechanism) < NEAREST) {
            return refused(
                    "socket_forward",
                    given.socketForward(),
                    "The rod's far end does not lie ahead of its pin in the direction in which the piston moves.",
                    "at least 10 mm ahead of the pin; behind it for a reverse mount");
        }
        return true;
    }

    /** A foot moves the pad forward: with the pad below the pivot that turns the pedal one way, above it the other. */
    private boolean pushes(Mechanism given, ResolvedMechanism mechanism) {
        if (Mechanisms.rodArm(mechanism) < NEAREST / 2) {
            return refused(
                    "pin_up",
                    given.pinUp(),
                    "Pushing the pad forward would not push the rod: it points at the pivot or would be pulled.",
                    "a pin on the side of the pivot that drives the piston ahead");
        }
        double ratio = Mechanisms.ratioAtRest(mechanism);
        return ratio >= 1
                || refused(
                        "pin_up",
                        given.pinUp(),
                        "The pedal would weaken the foot: the rod's arm is longer than the pad's.",
                        "a pin nearer to the pivot");
    }

    private boolean refused(String key, Given given, String message, String allowed) {
        values.problem(path + "." + key, Values.written(given), message, allowed);
        return false;
    }
}
