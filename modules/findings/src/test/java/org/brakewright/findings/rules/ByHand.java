package org.brakewright.findings.rules;

/**
 * The test car worked by hand from what is written on it: disc torque 2 mu p A r (see the law of disc brakes), statics
 * of the pedal, centred bar.
 */
final class ByHand {
    static final double G = 9.80665;

    /** 800 kg. */
    static final double WEIGHT = 800 * G;

    /** One piston of 36 mm. */
    private static final double PISTON = Math.PI / 4 * 0.036 * 0.036;

    /** Two wheels, two faces, two pistons, friction 0.42, radius 110 mm on a tyre of 300 mm: N/Pa. */
    static final double FRONT_PER_PASCAL = 2 * 2 * 0.42 * 2 * PISTON * 0.110 / 0.300;

    /** The same behind with one piston and friction 0.36: N/Pa. */
    static final double REAR_PER_PASCAL = 2 * 2 * 0.36 * PISTON * 0.110 / 0.300;

    /** Master of 0.70 in. */
    private static final double MASTER = Math.PI / 4 * 0.01778 * 0.01778;

    /** Ratio 5.5, efficiency 0.85. */
    private static final double ROD_PER_PUSH = 5.5 * 0.85;

    private ByHand() {}

    /** Push (N) for a deceleration (g) of the twin-master car. */
    static double push(double decelerationG) {
        return pushFor(decelerationG * WEIGHT / (FRONT_PER_PASCAL + REAR_PER_PASCAL));
    }

    /** Push (N) for a pressure (Pa) in both of the equal masters. */
    static double pushFor(double pressure) {
        return pressure * 2 * MASTER / ROD_PER_PUSH;
    }

    /** Pressure (Pa) in both of the equal masters for a push (N). */
    static double pressure(double push) {
        return push * ROD_PER_PUSH / (2 * MASTER);
    }

    /** Share of the rear in the brake force for an offset of the bar (mm, spacing 64 mm), pistons 0.84 to 0.36. */
    static double rearShare(double offset) {
        double front = 0.84 * (0.5 + offset / 64);
        double rear = 0.36 * (0.5 - offset / 64);
        return rear / (front + rear);
    }

    /** First lock (g) at a grip with the front first: Limpert, Brake Design and Safety, ch. 7 (from memory). */
    static double frontLock(double rearShare, double grip) {
        return 0.5 * grip / (1 - rearShare - 0.2 * grip);
    }

    /** Deceleration (g) from which the rear is first: (psi - Phi)/chi, the same source. */
    static double critical(double rearShare) {
        return (0.5 - rearShare) / 0.2;
    }

    /**
     * Deceleration (g) up to which the rear is first when the front discs only begin at a pressure (Pa): the smaller root
     * of z W ((0.5 - 0.2 z)/b - (0.5 + 0.2 z)/a) = p0, from force = a (p - p0) in front and b p behind.
     */
    static double rearFirstUpTo(double threshold) {
        return root(threshold, -1);
    }

    /** Deceleration (g) from which the rear is first again, the larger root. */
    static double rearFirstAgainFrom(double threshold) {
        return root(threshold, 1);
    }

    private static double root(double threshold, int sign) {
        double linear = WEIGHT * 0.5 * (1 / REAR_PER_PASCAL - 1 / FRONT_PER_PASCAL);
        double square = WEIGHT * 0.2 * (1 / REAR_PER_PASCAL + 1 / FRONT_PER_PASCAL);
        return (linear + sign * Math.sqrt(linear * linear - 4 * square * threshold)) / (2 * square);
    }
}
