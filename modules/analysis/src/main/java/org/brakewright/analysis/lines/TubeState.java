package org.brakewright.analysis.lines;

import java.util.List;
import org.brakewright.model.lines.Circuit;
import org.brakewright.model.lines.Nearness;
import org.brakewright.model.resolved.ResolvedLines.Spot;
import org.jspecify.annotations.Nullable;

/**
 * A tube as the bender makes it.
 *
 * @param name the builder's
 * @param circuit it belongs to
 * @param material of the tube
 * @param outsideDiameterM outside
 * @param wallM wall
 * @param developedM length along its middle, seat to seat
 * @param cutM length to cut, flares included
 * @param bends row by row
 * @param tailM straight after the last bend, its flare not included
 * @param straights every straight against what tool, nut and clamp need; empty where it is enough
 * @param strength burst, yield and swell
 * @param clips where clips sit and the longest way between them; null while none are told
 * @param gaps to every obstacle, smallest first
 * @param points of the route
 * @param middle of the bent tube as a chain of points, for drawing
 */
public record TubeState(
        String name,
        Circuit circuit,
        String material,
        double outsideDiameterM,
        double wallM,
        double developedM,
        double cutM,
        List<BendRow> bends,
        double tailM,
        List<ShortStraight> straights,
        Strength strength,
        @Nullable Clips clips,
        List<Gap> gaps,
        List<Spot> points,
        List<Spot> middle) {

    /**
     * A bend.
     *
     * @param straightM fed since the bend before, or since the seat at the start
     * @param markM where the bend begins, from the end of the cut tube
     * @param rotationRad turned against the bend before, right-hand about the way forward
     * @param angleRad that is wanted
     * @param setRad to bend to, since the tube springs back
     * @param radiusM to the middle of the tube
     */
    public record BendRow(
            double straightM, double markM, double rotationRad, double angleRad, double setRad, double radiusM) {}

    /**
     * A straight that is too short.
     *
     * @param number 1 for the one before the first bend
     * @param haveM long
     * @param needM at least
     * @param forNut whether nut and clamp need it, else the bender
     */
    public record ShortStraight(int number, double haveM, double needM, boolean forNut) {}

    /**
     * What pressure does to it.
     *
     * @param highestPa of the circuit, a frightened leg included
     * @param burstPa by Barlow on the outside diameter and the least tensile strength, the safe side
     * @param yieldPa at which the bore yields, by Lame and the least yield
     * @param swellM3 of the whole tube at the highest pressure
     */
    public record Strength(double highestPa, double burstPa, double yieldPa, double swellM3) {}

    /**
     * Clips.
     *
     * @param alongM from the start
     * @param longestM way without a clip, the ends count as held
     */
    public record Clips(List<Double> alongM, double longestM) {}

    /**
     * How near it comes.
     *
     * @param obstacle the builder's name
     * @param near what makes it matter
     * @param gapM from surface to surface
     * @param at the place on the tube's middle
     * @param alongM from the start
     */
    public record Gap(String obstacle, Nearness near, double gapM, Spot at, double alongM) {}
}
