package org.brakewright.kernel.fastener;

/**
 * A bolt tightened on a grip.
 *
 * <p>Sources: T. H. Wentzell, Machine Design, chapter 6; Shigley's Mechanical Engineering Design, 9th ed., sections 8-4
 * to 8-9.
 *
 * @param force in the bolt with no other load, N
 */
public record Preload(ScrewThread thread, double force) {
    public Preload {
        Require.positive("force", force);
    }

    /**
     * As a share of the load that the bolt's grade proves.
     *
     * @param proofStress Pa
     * @param share 0.75 for joints that are undone, 0.90 for permanent ones (Shigley, from memory)
     */
    public static Preload ofProof(ScrewThread thread, double proofStress, double share) {
        Require.positive("proofStress", proofStress);
        Require.that(share > 0 && share <= 1, "share", share, "must lie between 0 and 1");
        return new Preload(thread, share * proofStress * thread.stressArea());
    }

    /**
     * The torque that makes it, N m.
     *
     * @param nutFactor about 0.2 dry; it scatters by a quarter either way
     */
    public double torque(double nutFactor) {
        Require.positive("nutFactor", nutFactor);
        return nutFactor * thread.diameter() * force;
    }

    /**
     * How much the bolt stretches, m.
     *
     * @param grip length that stretches, m
     * @param young modulus, Pa
     */
    public double stretch(double grip, double young) {
        Require.positive("grip", grip);
        Require.positive("young", young);
        return force * grip / (thread.stressArea() * young);
    }

    /** The turn of the nut, from snug, that makes that stretch in a stiff joint, rad. */
    public double turn(double grip, double young) {
        return 2 * Math.PI * stretch(grip, young) / thread.pitch();
    }

    /**
     * Force in the bolt while a load pulls the joint, N.
     *
     * @param pull on this bolt, N
     * @param share of the pull that the bolt feels while the joint is closed, see {@link Grip#boltShare()}
     */
    public double underPull(double pull, double share) {
        return Math.max(force + share * pull, pull);
    }

    /** The pull that opens the joint, N. */
    public double opens(double share) {
        Require.that(share >= 0 && share < 1, "share", share, "must lie from 0 to below 1");
        return force / (1 - share);
    }
}
