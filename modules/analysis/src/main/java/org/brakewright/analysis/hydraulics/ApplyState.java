package org.brakewright.analysis.hydraulics;

/**
 * Masters and bar under one thrust.
 *
 * @param front piston that fills the front; with a diagonal split the one that fills the left front wheel
 * @param rear the other piston
 * @param rodTravel of the balance bar's bearing or of the booster's rod, m
 * @param bar how the balance bar stands; square without one
 */
public record ApplyState(PistonState front, PistonState rear, double rodTravel, BarStance bar) {

    /**
     * How a balance bar stands.
     *
     * @param slope tangent of its tilt, plus when the front clevis is ahead
     * @param frontShare of the thrust
     */
    public record BarStance(double slope, double frontShare) {
        static final BarStance NONE = new BarStance(0, 0.5);

        /** Tilt, plus when the front clevis is ahead, rad. */
        public double tilt() {
            return Math.atan(slope);
        }
    }
}
