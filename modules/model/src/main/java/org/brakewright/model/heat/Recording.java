package org.brakewright.model.heat;

import java.util.List;

/** What a logger wrote down: speeds in the order of time. */
public final class Recording {
    /** A logger that says nothing for longer may have missed a stop, s. */
    public static final double LONGEST_GAP = 5;

    private final List<Sample> samples;

    /**
     * One moment.
     *
     * @param time s, from any start
     * @param speed m/s, not negative
     */
    public record Sample(double time, double speed) {
        public Sample {
            if (!Double.isFinite(time)) {
                throw new IllegalArgumentException("time must be finite, was " + time);
            }
            if (!(speed >= 0) || Double.isInfinite(speed)) {
                throw new IllegalArgumentException("speed must be finite and not negative, was " + speed);
            }
        }
    }

    /**
     * A recording.
     *
     * @throws IllegalArgumentException when there are fewer than two samples, or one is not later than that before it
     */
    public Recording(List<Sample> samples) {
        if (samples.size() < 2) {
            throw new IllegalArgumentException("samples must be two at least, were " + samples.size());
        }
        for (int i = 1; i < samples.size(); i++) {
            if (samples.get(i).time() <= samples.get(i - 1).time()) {
                throw new IllegalArgumentException("samples must stand in the order of time, were not at " + i);
            }
        }
        this.samples = List.copyOf(samples);
    }

    /** All samples, at least two. */
    public List<Sample> samples() {
        return samples;
    }
}
