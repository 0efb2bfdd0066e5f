package org.brakewright.model.resolved;

import java.util.List;

/**
 * What the shop makes, in SI.
 *
 * @param kFactor of bends in sheet
 * @param folded parts folded of strip
 * @param joints ends of tube that meet another
 */
public record ResolvedShop(double kFactor, List<Folded> folded, List<Joint> joints) {
    public ResolvedShop {
        folded = List.copyOf(folded);
        joints = List.copyOf(joints);
    }

    /**
     * A strip folded across its width.
     *
     * @param thickness m
     * @param width m
     * @param insideRadius of its bends, m
     * @param legs to the outside corners, m
     * @param bends between the legs from flat, rad, plus up
     */
    public record Folded(
            String name,
            double thickness,
            double width,
            double insideRadius,
            List<Double> legs,
            List<Double> bends,
            List<Hole> holes) {
        public Folded {
            legs = List.copyOf(legs);
            bends = List.copyOf(bends);
            holes = List.copyOf(holes);
        }
    }

    /**
     * A hole in a leg.
     *
     * @param leg from 0
     * @param along from the leg's outside corner, or from the free end of the first, m
     * @param across from the strip's edge, m
     * @param diameter m
     */
    public record Hole(int leg, double along, double across, double diameter) {}

    /**
     * The end of a tube that meets another.
     *
     * @param branchDiameter outside, m
     * @param mainDiameter outside, m
     * @param angle between the axes, rad
     * @param offset by which they miss each other, m
     */
    public record Joint(String name, double branchDiameter, double mainDiameter, double angle, double offset) {}
}
