package org.brakewright.analysis.balance;

/**
 * How much of the grip must be used when the first wheel locks: UN R13-H Annex 5, 3.1 asks z at least 0.1 + 0.70 (k - 0.2)
 * for grips k from 0.2 to 0.8 (from memory).
 */
public final class EfficiencyLine {
    /** Least grip that is judged. */
    public static final double FROM_GRIP = 0.2;

    /** Greatest grip that is judged. */
    public static final double TO_GRIP = 0.8;

    private EfficiencyLine() {}

    /** Least deceleration in g at a grip. */
    public static double needed(double grip) {
        return 0.1 + 0.70 * (grip - 0.2);
    }
}
