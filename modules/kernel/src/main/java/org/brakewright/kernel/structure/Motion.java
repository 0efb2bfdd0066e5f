package org.brakewright.kernel.structure;

/**
 * How a node moves.
 *
 * @param shift m
 * @param turn small rotations, rad
 */
public record Motion(Vector3 shift, Vector3 turn) {
    static Motion at(double[] freedoms, int start) {
        return new Motion(
                new Vector3(freedoms[start], freedoms[start + 1], freedoms[start + 2]),
                new Vector3(freedoms[start + 3], freedoms[start + 4], freedoms[start + 5]));
    }

    /** One of the six components, m or rad. */
    public double along(Freedom freedom) {
        return switch (freedom) {
            case SHIFT_X -> shift.x();
            case SHIFT_Y -> shift.y();
            case SHIFT_Z -> shift.z();
            case TURN_X -> turn.x();
            case TURN_Y -> turn.y();
            case TURN_Z -> turn.z();
        };
    }
}
