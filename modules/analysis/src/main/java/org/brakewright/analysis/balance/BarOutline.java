package org.brakewright.analysis.balance;

import org.brakewright.model.resolved.ResolvedApply.Bar;

/**
 * Where a balance bar's points lie in one pose, seen from above: what a drawing of it needs.
 *
 * @param bearing its centre
 * @param bar its own line through the bearing
 * @param front pins of the front rod
 * @param rear pins of the rear rod
 * @param frontAheadMost the line of the bar at its largest tilt with the front clevis ahead
 * @param rearAheadMost the same with the rear clevis ahead
 */
public record BarOutline(Spot bearing, Line bar, Rod front, Rod rear, Line frontAheadMost, Line rearAheadMost) {

    /**
     * A point.
     *
     * @param acrossM toward the front master from the middle between both masters
     * @param aheadM along the push, from where the bearing rests
     */
    public record Spot(double acrossM, double aheadM) {}

    /**
     * A rod.
     *
     * @param clevis its pin at the bar
     * @param socket its end in the piston
     */
    public record Rod(Spot clevis, Spot socket) {}

    /**
     * A straight line across the car.
     *
     * @param front its end at the front clevis
     * @param rear its end at the rear clevis
     */
    public record Line(Spot front, Spot rear) {}

    /** The outline of a bar in a pose. */
    public static BarOutline of(Bar bar, BarPose pose) {
        Turned turned = new Turned(bar, pose.bearingM(), pose.tiltRad());
        double socketAtRest = bar.stance().rodLength() * Math.cos(bar.rodLean())
                - bar.stance().pinSetBack();
        double half = bar.stance().masterSpacing() / 2;
        return new BarOutline(
                new Spot(bar.offset(), pose.bearingM()),
                turned.line(),
                new Rod(turned.pin(turned.frontArm()), new Spot(half, socketAtRest + pose.frontM())),
                new Rod(turned.pin(-turned.rearArm()), new Spot(-half, socketAtRest + pose.rearM())),
                new Turned(bar, pose.bearingM(), bar.tiltLimit()).line(),
                new Turned(bar, pose.bearingM(), -bar.tiltLimit()).line());
    }

    /**
     * A bar turned about its bearing.
     *
     * @param bar as set
     * @param ahead of the bearing, m
     * @param tilt plus when the front clevis is ahead, rad
     */
    private record Turned(Bar bar, double ahead, double tilt) {
        double frontArm() {
            return bar.clevisSpacing() / 2 - bar.offset();
        }

        double rearArm() {
            return bar.clevisSpacing() / 2 + bar.offset();
        }

        /** A clevis pin at a place (m) along the bar from the bearing, plus toward the front one. */
        Spot pin(double along) {
            return at(along, bar.stance().pinSetBack());
        }

        Line line() {
            return new Line(at(frontArm(), 0), at(-rearArm(), 0));
        }

        private Spot at(double along, double behind) {
            return new Spot(
                    bar.offset() + along * Math.cos(tilt) + behind * Math.sin(tilt),
                    ahead + along * Math.sin(tilt) - behind * Math.cos(tilt));
        }
    }
}
