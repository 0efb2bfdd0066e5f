package org.brakewright.kernel.tubing;

/**
 * How a bend opens when the tool lets go: a bar or sheet of elastic, ideally plastic metal. For tube, the outside
 * diameter stands for the thickness: an estimate; a trial bend says more.
 *
 * <p>Source: S. Kalpakjian, S. Schmid, Manufacturing Engineering and Technology, chapter on sheet metal (from memory).
 *
 * @param thickness in the plane of the bend, m
 * @param yield stress, Pa
 * @param youngsModulus Pa
 */
public record Springback(double thickness, double yield, double youngsModulus) {
    private static final int HALVINGS = 100;

    public Springback {
        Demand.positive("thickness", thickness);
        Demand.positive("yield", yield);
        Demand.positive("youngsModulus", youngsModulus);
    }

    /** Inside radius (m) after the tool that bent it to the given inside radius lets go. */
    public double sprungRadius(double toolRadius) {
        Demand.positive("toolRadius", toolRadius);
        double flatness = toolRadius / flatRadius();
        Demand.holds(flatness < 0.5, "toolRadius must leave the metal bent, below " + 0.5 * flatRadius());
        return toolRadius / (1 - 3 * flatness + 4 * flatness * flatness * flatness);
    }

    /** Inside radius (m) of the tool that leaves the wanted one: 1/tool = 1/wanted + 3/flat - 4 tool^2/flat^3. */
    public double toolRadius(double wanted) {
        Demand.positive("wanted", wanted);
        double low = 0;
        double high = 0.5 * flatRadius();
        for (int halving = 0; halving < HALVINGS; halving++) {
            double middle = (low + high) / 2;
            boolean opensTooFar = middle > 0 && sprungRadius(middle) > wanted;
            high = opensTooFar ? middle : high;
            low = opensTooFar ? low : middle;
        }
        return low;
    }

    /** Share of the bent angle that is left, below 1, for an inside radius (m) of the tool. */
    public double angleKept(double toolRadius) {
        return (2 * toolRadius / thickness + 1) / (2 * sprungRadius(toolRadius) / thickness + 1);
    }

    /** Angle (rad) to bend to, over a tool of the given inside radius (m), so that the wanted one is left. */
    public double bendTo(double wantedAngle, double toolRadius) {
        return wantedAngle / angleKept(toolRadius);
    }

    /** Twice the largest radius (m) that leaves the metal bent at all. */
    private double flatRadius() {
        return youngsModulus * thickness / yield;
    }
}
