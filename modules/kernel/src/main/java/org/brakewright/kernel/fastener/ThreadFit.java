package org.brakewright.kernel.fastener;

/**
 * A screw in a nut or tapped hole at the slack end of the tolerances, where the threads hold least.
 *
 * <p>Maintainer's notes. Shear areas: ASME B1.1, appendix B. Metric tolerances 6g in 6H by the formulas of ISO 965-1
 * (micrometres, with pitch and diameter in millimetres); inch threads, about as wide, take the same. All from memory.
 *
 * @param screwMajor least major diameter of the screw, m
 * @param screwPitch its least pitch diameter, m
 * @param nutPitch greatest pitch diameter of the nut, m
 * @param nutMinor its greatest minor diameter, m
 */
public record ThreadFit(double pitch, double screwMajor, double screwPitch, double nutPitch, double nutMinor) {
    /** Pitch diameter lies this many pitches below the major diameter (ISO 68-1). */
    private static final double TO_PITCH_DIAMETER = 0.6495;

    /** Minor diameter of the nut lies this many pitches below the major diameter (ISO 68-1). */
    private static final double TO_MINOR = 1.0825;

    private static final double TAN_30 = 0.57735;

    private static final double MICRO = 1e-6;

    /** From this pitch on, in mm, the minor diameter's tolerance has its second form. */
    private static final double COARSE_FROM = 1;

    public ThreadFit {
        Require.positive("pitch", pitch);
        Require.that(
                nutMinor > 0 && nutMinor < screwPitch, "nutMinor", nutMinor, "must lie between zero and screwPitch");
        Require.that(nutPitch >= screwPitch, "nutPitch", nutPitch, "must not lie below screwPitch");
        Require.that(screwMajor > nutPitch, "screwMajor", screwMajor, "must lie above nutPitch");
    }

    /** The usual fit of a thread. */
    public static ThreadFit of(ScrewThread thread) {
        double d = thread.diameter() * 1e3;
        double p = thread.pitch() * 1e3;
        double gap = 15 + 11 * p;
        double major = 180 * Math.pow(p, 2.0 / 3) - 3.15 / Math.sqrt(p);
        double flank = 90 * Math.pow(p, 0.4) * Math.pow(d, 0.1);
        double minor = p >= COARSE_FROM ? 230 * Math.pow(p, 0.7) : 433 * p - 190 * Math.pow(p, 1.22);
        double middle = thread.diameter() - TO_PITCH_DIAMETER * thread.pitch();
        return new ThreadFit(
                thread.pitch(),
                thread.diameter() - MICRO * (gap + major),
                middle - MICRO * (gap + flank),
                middle + MICRO * 1.32 * flank,
                thread.diameter() - TO_MINOR * thread.pitch() + MICRO * minor);
    }

    /** Area that must shear for the screw's thread to strip, m2. */
    public double screwArea(double engagement) {
        return area(nutMinor, screwPitch - nutMinor, engagement);
    }

    /** Area that must shear for the thread of nut or hole to strip, m2. */
    public double nutArea(double engagement) {
        return area(screwMajor, screwMajor - nutPitch, engagement);
    }

    /** At a diameter, with the tooth as thick as its flanks make it there. */
    private double area(double diameter, double fromFlank, double engagement) {
        Require.positive("engagement", engagement);
        return Math.PI * diameter * engagement * (0.5 + TAN_30 * fromFlank / pitch);
    }

    /**
     * The pull that strips either thread, N.
     *
     * @param engagement length of full thread, m
     * @param screwShear shear strength of the screw, Pa
     * @param nutShear shear strength of nut or hole, Pa
     */
    public double strips(double engagement, double screwShear, double nutShear) {
        Require.positive("screwShear", screwShear);
        Require.positive("nutShear", nutShear);
        return Math.min(screwShear * screwArea(engagement), nutShear * nutArea(engagement));
    }

    /** The engagement, of full thread, that a pull asks for, m; shear strengths in Pa. */
    public double engagementFor(double pull, double screwShear, double nutShear) {
        Require.positive("pull", pull);
        return pull / strips(1, screwShear, nutShear);
    }
}
