package org.brakewright.kernel.clutch;

/**
 * A spring between the car and a pedal arm that holds the pedal up before its dead centre and helps the foot beyond it.
 *
 * <p>At dead centre pivot, pin and anchor lie in one line and the spring stores most: a pulling spring is longest there,
 * with the pivot between its ends; a pushing spring is shortest, with both ends on one side of the pivot. The moment is the
 * spring's force times its arm, a r sin(angle)/length.
 *
 * @param action whether it pulls or pushes
 * @param rate N/m
 * @param freeLength m
 * @param pinRadius pivot to its pin on the pedal, m
 * @param anchorRadius pivot to its anchor on the car, another radius than the pin's, m
 */
public record OverCentreSpring(Action action, double rate, double freeLength, double pinRadius, double anchorRadius) {

    /** What the spring does between its ends. */
    public enum Action {
        PULLS,
        PUSHES
    }

    public OverCentreSpring {
        Demand.notNegative("rate", rate);
        Demand.positive("freeLength", freeLength);
        Demand.positive("pinRadius", pinRadius);
        Demand.positive("anchorRadius", anchorRadius);
        Demand.within("anchorRadius", anchorRadius, anchorRadius != pinRadius, "another radius than pinRadius");
    }

    /** Length (m) at a pedal angle from dead centre (rad). */
    public double length(double angle) {
        double sign = action == Action.PULLS ? 1 : -1;
        return Math.sqrt(pinRadius * pinRadius
                + anchorRadius * anchorRadius
                + 2 * sign * pinRadius * anchorRadius * Math.cos(angle));
    }

    /** Moment (N m) that drives the pedal away from dead centre at an angle from it (rad): plus helps, minus holds back. */
    public double moment(double angle) {
        double length = length(angle);
        double stretched = action == Action.PULLS ? length - freeLength : freeLength - length;
        return rate * Math.max(0, stretched) * pinRadius * anchorRadius * Math.sin(angle) / length;
    }
}
