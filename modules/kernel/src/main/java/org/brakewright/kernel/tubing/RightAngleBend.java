package org.brakewright.kernel.tubing;

/**
 * Strip bent to a right angle over a punch, in metal that hardens as it is stretched: force, angle to punch to, stock.
 * The unstretched layer lies 0.45 of the thickness from the inside.
 *
 * <p>Source: A. Ghosh, A. K. Mallik, Manufacturing Science, bending, problem 9.
 *
 * @param thickness m
 * @param punchRadius inside radius of the bend, m
 * @param metal what is bent
 */
public record RightAngleBend(double thickness, double punchRadius, Metal metal) {
    private static final double STRETCHED = 0.55;
    private static final double PRESSED = 0.45;

    public RightAngleBend {
        Demand.positive("thickness", thickness);
        Demand.positive("punchRadius", punchRadius);
    }

    /**
     * Metal that hardens in a straight line.
     *
     * @param yield stress, Pa
     * @param hardening rise of the stress with natural strain, Pa
     * @param youngsModulus Pa
     */
    public record Metal(double yield, double hardening, double youngsModulus) {
        public Metal {
            Demand.positive("yield", yield);
            Demand.notNegative("hardening", hardening);
            Demand.positive("youngsModulus", youngsModulus);
        }
    }

    /** Least radius (m) of the punch at which the outside of a sheet (m) just keeps below a natural strain. */
    public static double leastRadius(double thickness, double fractureStrain) {
        Demand.positive("thickness", thickness);
        Demand.positive("fractureStrain", fractureStrain);
        double least = (1 / Math.expm1(fractureStrain) - 0.82) * thickness / 1.82;
        Demand.holds(least >= 0, "fractureStrain must leave a radius, is " + fractureStrain);
        return least;
    }

    /** Bending moment for each width, N m/m. */
    public double moment() {
        double slenderness = punchRadius / thickness;
        double outside = hardened(Math.log1p(1 / (1.82 * slenderness + 0.82)));
        double inside = hardened(Math.log1p(1 / (2.22 * slenderness + 1)));
        return half(STRETCHED, outside) + half(PRESSED, inside);
    }

    /** Force (N) of the punch for a width (m), an arm (m) from punch to die and a friction coefficient. */
    public double force(double width, double arm, double friction) {
        double lean = Math.atan(friction);
        return width * moment() / arm * (1 + Math.cos(lean + friction * Math.sin(lean)));
    }

    /** Angle (rad) of the punch that leaves a right angle after springback. */
    public double punchAngle() {
        double opening = 12 * layerRadius() * moment() / (metal.youngsModulus * thickness * thickness * thickness);
        return Math.PI / 2 / (opening + 1);
    }

    /** Stock (m) for two equal legs (m), each measured to the outside of the other. */
    public double stock(double leg) {
        return 2 * (layerRadius() * Math.PI / 4 + leg - (punchRadius + thickness));
    }

    private double layerRadius() {
        return punchRadius + PRESSED * thickness;
    }

    private double hardened(double strain) {
        return metal.yield + metal.hardening * strain;
    }

    /** Moment of the stress that rises from yield to what the skin bears, on one side of the layer. */
    private double half(double share, double skin) {
        double depth = share * thickness;
        return depth * depth * (metal.yield / 6 + skin / 3);
    }
}
