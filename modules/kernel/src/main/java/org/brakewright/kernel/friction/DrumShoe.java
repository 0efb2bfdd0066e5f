package org.brakewright.kernel.friction;

/**
 * One rigid shoe inside a drum, pivoted at a fixed pin.
 *
 * <p>Long-shoe theory: the shoe turns about its pin, so the lining pressure grows as the sine of the angle from the pin's
 * radius. Moments about the pin balance the push on the tip. Source: Shigley's Mechanical Engineering Design, ch. 16, and
 * V. B. Bhandari, Design of Machine Elements, ch. 12 (from memory).
 *
 * @param pivotDistance drum center to pivot pin, m; less than the drum radius
 * @param drumRadius inner radius of the drum, m
 * @param heelAngle start of the lining, rad, measured at the drum center from the pin
 * @param toeAngle end of the lining, rad, measured the same way
 * @param actuationArm distance from the pin to the line of the push on the tip, m
 */
public record DrumShoe(
        double pivotDistance, double drumRadius, double heelAngle, double toeAngle, double actuationArm) {
    public DrumShoe {
        Require.positive("pivotDistance", pivotDistance);
        Require.positive("drumRadius", drumRadius);
        Require.that(
                pivotDistance < drumRadius, "pivotDistance", pivotDistance, "must be below drumRadius " + drumRadius);
        Require.notNegative("heelAngle", heelAngle);
        Require.that(
                toeAngle > heelAngle && toeAngle <= Math.PI,
                "toeAngle",
                toeAngle,
                "must lie above heelAngle, up to pi");
        Require.positive("actuationArm", actuationArm);
    }

    /**
     * Friction force over push, T/(F r), when the drum turns from the tip towards the pin.
     *
     * @param friction between lining and drum
     */
    public BrakeFactor leading(double friction) {
        Require.positive("friction", friction);
        if (friction >= selfLockFriction()) {
            return new BrakeFactor.SelfLocking(friction, selfLockFriction());
        }
        return factor(friction, -1);
    }

    /** The same when the drum turns from the pin towards the tip: friction lifts the shoe off, it never locks. */
    public BrakeFactor.Stable trailing(double friction) {
        Require.positive("friction", friction);
        return factor(friction, 1);
    }

    /** Friction coefficient from which the leading shoe pulls itself in and locks without a push. */
    public double selfLockFriction() {
        return pressureMoment() / frictionMoment();
    }

    /** Greatest lining pressure, Pa, of the leading shoe under a push in N with a lining of a width in m. */
    public double leadingPressure(double push, double friction, double width) {
        Require.positive("friction", friction);
        Require.positive("width", width);
        Require.that(friction < selfLockFriction(), "friction", friction, "must be below self-lock");
        return pressure(push, width, pressureMoment() - friction * frictionMoment());
    }

    /** Greatest lining pressure, Pa, of the trailing shoe under a push in N with a lining of a width in m. */
    public double trailingPressure(double push, double friction, double width) {
        Require.positive("friction", friction);
        Require.positive("width", width);
        return pressure(push, width, pressureMoment() + friction * frictionMoment());
    }

    private double pressure(double push, double width, double moment) {
        return push * actuationArm * sineOfGreatestPressure() / (width * drumRadius * moment);
    }

    private BrakeFactor.Stable factor(double friction, int sign) {
        double reach = torqueMoment() * actuationArm / drumRadius;
        double moment = pressureMoment() + sign * friction * frictionMoment();
        return new BrakeFactor.Stable(friction * reach / moment, reach * pressureMoment() / (moment * moment));
    }

    // The three integrals over the lining, per (greatest pressure x width x drum radius / sine at greatest pressure).

    private double pressureMoment() {
        return pivotDistance * ((toeAngle - heelAngle) / 2 - (Math.sin(2 * toeAngle) - Math.sin(2 * heelAngle)) / 4);
    }

    private double frictionMoment() {
        double toe = Math.sin(toeAngle);
        double heel = Math.sin(heelAngle);
        return torqueMoment() - pivotDistance / 2 * (toe * toe - heel * heel);
    }

    private double torqueMoment() {
        return drumRadius * (Math.cos(heelAngle) - Math.cos(toeAngle));
    }

    private double sineOfGreatestPressure() {
        boolean crossesTheTop = heelAngle <= Math.PI / 2 && toeAngle >= Math.PI / 2;
        return crossesTheTop ? 1 : Math.max(Math.sin(heelAngle), Math.sin(toeAngle));
    }
}
