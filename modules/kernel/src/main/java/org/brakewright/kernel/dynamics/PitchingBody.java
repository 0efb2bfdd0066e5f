package org.brakewright.kernel.dynamics;

/**
 * A body on its springs that pitches when the car slows: the load moved forward swings after the one that it strives for,
 * {@code w'' = p^2 (w_steady - w) - 2 d p w'}. Common practice, no source.
 *
 * @param frequency p, undamped, rad/s
 * @param damping d, share of the critical damping
 */
public record PitchingBody(double frequency, double damping) {
    public PitchingBody {
        Require.positive("frequency", frequency);
        Require.notNegative("damping", damping);
    }

    /** How fast the rate of the load moved changes, N/s2. */
    public double acceleration(double steady, double moved, double rate) {
        return frequency * frequency * (steady - moved) - 2 * damping * frequency * rate;
    }
}
