package org.brakewright.kernel.hydraulics;

/**
 * Two chambers in one bore behind one push. The primary chamber lies at the pushrod; the piston between the chambers
 * floats.
 *
 * <p>Model: each chamber's spring carries its force past the other, so each pressure is (F - its spring) eta / A; the
 * chamber with the weaker spring leads by the difference of the springs over the area. When a circuit is open its
 * piston runs to the end of its stroke and carries the push on, metal on metal. Source: force balance of both pistons;
 * R. Limpert, Brake Design and Safety, ch. 5 (from memory).
 *
 * @param area of the bore, m2
 * @param primary chamber at the pushrod
 * @param secondary chamber at the far end
 * @param efficiency share of the push that the seals leave, more than 0, at most 1
 */
public record TandemMaster(double area, Chamber primary, Chamber secondary, double efficiency) {
    public TandemMaster {
        Demand.positive("area", area);
        Demand.efficiency("efficiency", efficiency);
    }

    /**
     * One chamber.
     *
     * @param springForce of its return spring at working stroke, N
     * @param lostStroke until its port closes, m
     * @param fullStroke by which its volume can shrink, lost stroke included, m
     */
    public record Chamber(double springForce, double lostStroke, double fullStroke) {
        public Chamber {
            Demand.notNegative("springForce", springForce);
            Demand.positive("fullStroke", fullStroke);
            Demand.within(
                    "lostStroke", lostStroke, lostStroke >= 0 && lostStroke < fullStroke, "0 to below fullStroke");
        }
    }

    /** Which circuit leaks so far that it holds no pressure. */
    public enum Failure {
        NONE,
        PRIMARY,
        SECONDARY
    }

    /**
     * Pressures of the two chambers.
     *
     * @param primary Pa
     * @param secondary Pa
     */
    public record Pressures(double primary, double secondary) {}

    /** Pressures (Pa) for a push (N); a failed circuit has none, the other is as before. */
    public Pressures pressures(double push, Failure failure) {
        return new Pressures(
                failure == Failure.PRIMARY ? 0 : law(primary).pressure(push),
                failure == Failure.SECONDARY ? 0 : law(secondary).pressure(push));
    }

    /** Travel (m) of the pushrod when the chambers deliver volumes (m3); a failed chamber gives up its whole stroke. */
    public double rodTravel(double primaryVolume, double secondaryVolume, Failure failure) {
        double primaryTravel = failure == Failure.PRIMARY
                ? primary.fullStroke()
                : stroke(primary).stroke(primaryVolume);
        double secondaryTravel = failure == Failure.SECONDARY
                ? secondary.fullStroke()
                : stroke(secondary).stroke(secondaryVolume);
        return primaryTravel + secondaryTravel;
    }

    /** Stroke (m) that the primary chamber has left after a volume (m3); negative when it runs out. */
    public double primaryLeft(double volume) {
        return stroke(primary).left(volume);
    }

    /** Stroke (m) that the secondary chamber has left after a volume (m3); negative when it runs out. */
    public double secondaryLeft(double volume) {
        return stroke(secondary).left(volume);
    }

    private MasterCylinder law(Chamber chamber) {
        return new MasterCylinder(area, chamber.springForce(), efficiency);
    }

    private MasterStroke stroke(Chamber chamber) {
        return new MasterStroke(area, chamber.lostStroke(), chamber.fullStroke());
    }
}
