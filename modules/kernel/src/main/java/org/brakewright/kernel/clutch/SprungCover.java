package org.brakewright.kernel.clutch;

/**
 * A clutch cover of known spring: what the fingers need while the cushion opens and the plate lifts.
 *
 * <p>Balance of the diaphragm about its ring: the spring's force on the plate is carried by the cushion and by the
 * fingers, S(s0 + u) = Q(u) + i F. The tips go i u, and further by what the fingers bend, F/k.
 *
 * @param spring the diaphragm
 * @param engagedDeflection of the spring with the clutch engaged, at the pressing radius, more than 0, m
 * @param cushionTravel of the plate, m
 * @param fingerStiffness of all fingers together at their tips, N/m
 */
public record SprungCover(
        DiaphragmSpring spring, double engagedDeflection, double cushionTravel, double fingerStiffness) {
    public SprungCover {
        Demand.positive("engagedDeflection", engagedDeflection);
        Demand.positive("cushionTravel", cushionTravel);
        Demand.positive("fingerStiffness", fingerStiffness);
    }

    /** Clamp force (N) with the clutch engaged. */
    public double clampForce() {
        return spring.force(engagedDeflection);
    }

    /** The cover at a lift of its pressure plate (m, not negative). */
    public CoverPoint at(double lift) {
        double ratio = spring.fingerRatio();
        double left = new Cushion(Math.max(0, clampForce()), cushionTravel).force(lift);
        double force = Math.max(0, spring.force(engagedDeflection + lift) - left) / ratio;
        return new CoverPoint(lift, ratio * lift + force / fingerStiffness, force, left);
    }

    /** The same cover when the facings have worn by a thickness (m, both faces together): the spring has come back so far. */
    public SprungCover worn(double wear) {
        Demand.within("wear", wear, wear >= 0 && wear < engagedDeflection, "0 to below engagedDeflection");
        return new SprungCover(spring, engagedDeflection - wear, cushionTravel, fingerStiffness);
    }

    /** How far (m) the finger tips move toward the bearing when the facings wear by a thickness (m). */
    public double fingerRise(double wear) {
        return spring.fingerRatio() * wear;
    }
}
