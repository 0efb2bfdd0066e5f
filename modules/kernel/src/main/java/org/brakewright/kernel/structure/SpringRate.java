package org.brakewright.kernel.structure;

/**
 * Six independent stiffnesses of a spring or bolt.
 *
 * @param shift along the three axes, N/m
 * @param turn about the three axes, N m/rad
 */
public record SpringRate(Vector3 shift, Vector3 turn) {
    public SpringRate {
        notNegative("shift", shift);
        notNegative("turn", turn);
    }

    /** Along the first axis only, N/m. */
    public static SpringRate axial(double rate) {
        return new SpringRate(new Vector3(rate, 0, 0), Vector3.ZERO);
    }

    private static void notNegative(String field, Vector3 rate) {
        Require.notNegative(field + ".x", rate.x());
        Require.notNegative(field + ".y", rate.y());
        Require.notNegative(field + ".z", rate.z());
    }

    double[] values() {
        return new double[] {shift.x(), shift.y(), shift.z(), turn.x(), turn.y(), turn.z()};
    }
}
