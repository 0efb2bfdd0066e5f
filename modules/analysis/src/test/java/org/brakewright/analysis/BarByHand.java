package org.brakewright.analysis;

import org.brakewright.model.resolved.ResolvedApply.Bar;

/**
 * A bar as three forces and three points.
 *
 * @param bar as set
 */
record BarByHand(Bar bar) {
    double lean() {
        return (bar.clevisSpacing() - bar.stance().masterSpacing())
                / 2
                / bar.stance().rodLength();
    }

    /** Pin of an end from the bearing: across and ahead. */
    double[] pin(double side, double tilt) {
        double along = bar.clevisSpacing() / 2 - side * bar.offset();
        double across = along * Math.cos(tilt) + side * bar.stance().pinSetBack() * Math.sin(tilt);
        double ahead = side * along * Math.sin(tilt) - bar.stance().pinSetBack() * Math.cos(tilt);
        return new double[] {across, ahead};
    }

    /** Moments about the bearing: each rod's thrust at its arm, its sideways force lean times the thrust. */
    double frontShare(double tilt) {
        double[] front = pin(1, tilt);
        double[] rear = pin(-1, tilt);
        double atFront = front[0] + front[1] * lean();
        double atRear = rear[0] + rear[1] * lean();
        return Math.min(1, Math.max(0, atRear / (atFront + atRear)));
    }

    double rest() {
        return Math.atan(bar.stance().restLead() / bar.clevisSpacing());
    }

    /** What a clevis goes beyond its piston as its pin moves sideways: lean times that. */
    double swing(double side, double tilt) {
        return lean() * (pin(side, tilt)[0] - pin(side, rest())[0]);
    }

    double lead(double frontStroke, double rearStroke, double tilt) {
        return frontStroke
                + swing(1, tilt)
                - rearStroke
                - swing(-1, tilt)
                + bar.stance().restLead();
    }

    double bearing(double frontStroke, double rearStroke, double tilt) {
        double toFront = 0.5 + bar.offset() / bar.clevisSpacing();
        return toFront * (frontStroke + swing(1, tilt))
                + (1 - toFront) * (rearStroke + swing(-1, tilt))
                + bar.stance().pinSetBack() * (Math.cos(tilt) - Math.cos(rest()));
    }
}
