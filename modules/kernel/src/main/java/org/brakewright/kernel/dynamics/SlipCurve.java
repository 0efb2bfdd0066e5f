package org.brakewright.kernel.dynamics;

/**
 * What a tire holds along the road against its slip, as a share of the most that it holds: {@code y = sin(C atan(B s))}.
 *
 * <p>Source: H. B. Pacejka, Tire and Vehicle Dynamics, the magic formula for pure longitudinal slip with its curvature
 * factor at zero (from memory). Slip is {@code 1 - omega R/v}: 0 rolls freely, 1 is locked.
 *
 * @param shape C, above 1 and below 3
 * @param stiffness B
 */
public record SlipCurve(double shape, double stiffness) {
    private static final double MOST_SHAPE = 3;
    private static final int HALVINGS = 60;

    public SlipCurve {
        Require.that(shape > 1 && shape < MOST_SHAPE, "shape", shape, "must lie between 1 and 3");
        Require.positive("stiffness", stiffness);
    }

    /**
     * The curve with its peak at a slip and with a share of it left at full slip.
     *
     * @param peakSlip slip of the greatest force, above 0 and below 1
     * @param slidingShare force of the locked wheel over the greatest, above 0 and below 1
     */
    public static SlipCurve of(double peakSlip, double slidingShare) {
        Require.that(peakSlip > 0 && peakSlip < 1, "peakSlip", peakSlip, "must lie between 0 and 1");
        Require.that(slidingShare > 0 && slidingShare < 1, "slidingShare", slidingShare, "must lie between 0 and 1");
        double low = 1;
        double high = MOST_SHAPE;
        for (int i = 0; i < HALVINGS; i++) {
            double shape = 0.5 * (low + high);
            if (withPeakAt(peakSlip, shape).share(1) > slidingShare) {
                low = shape;
            } else {
                high = shape;
            }
        }
        return withPeakAt(peakSlip, 0.5 * (low + high));
    }

    /** Share of the greatest force at a slip; minus for a wheel that turns faster than it rolls. */
    public double share(double slip) {
        return Math.sin(shape * Math.atan(stiffness * slip));
    }

    /** The peak lies where the sine's argument is a right angle. */
    private static SlipCurve withPeakAt(double peakSlip, double shape) {
        return new SlipCurve(shape, Math.tan(Math.PI / (2 * shape)) / peakSlip);
    }
}
