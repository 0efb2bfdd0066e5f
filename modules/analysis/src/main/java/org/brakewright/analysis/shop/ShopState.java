package org.brakewright.analysis.shop;

import java.util.List;

/**
 * What the shop makes.
 *
 * @param folded flat patterns
 * @param saddles paper that is wrapped round the ends of tubes
 */
public record ShopState(List<FlatPart> folded, List<Saddle> saddles) {

    /**
     * A folded part laid flat.
     *
     * @param name the builder's
     * @param lengthM of the strip
     * @param widthM of the strip, along the bends
     * @param thicknessM of the sheet
     * @param insideRadiusM of the bends
     * @param kFactor of the bends
     * @param bends from the first end
     * @param holes in the flat strip
     */
    public record FlatPart(
            String name,
            double lengthM,
            double widthM,
            double thicknessM,
            double insideRadiusM,
            double kFactor,
            List<BendLine> bends,
            List<FlatHole> holes) {}

    /**
     * A bend on the flat strip.
     *
     * @param startM where it begins, from the first end
     * @param middleM its middle
     * @param endM where it ends
     * @param angleRad from flat, plus up
     */
    public record BendLine(double startM, double middleM, double endM, double angleRad) {}

    /**
     * A hole in the flat strip.
     *
     * @param alongM from the first end
     * @param acrossM from the edge
     * @param diameterM drilled
     * @param toBendM from its edge to the nearest bend; infinite without a bend
     */
    public record FlatHole(double alongM, double acrossM, double diameterM, double toBendM) {}

    /**
     * Paper for the end of a tube.
     *
     * @param name the builder's
     * @param branchDiameterM outside, of the tube that is notched
     * @param mainDiameterM outside, of the tube it meets
     * @param angleRad between their axes
     * @param offsetM by which the axes miss each other
     * @param edge of the paper, once round the tube, from the side that leans over the main tube
     */
    public record Saddle(
            String name,
            double branchDiameterM,
            double mainDiameterM,
            double angleRad,
            double offsetM,
            List<EdgePoint> edge) {}

    /**
     * A point of the paper's edge.
     *
     * @param acrossM round the tube
     * @param upM along it, from where both axes pass each other
     */
    public record EdgePoint(double acrossM, double upM) {}
}
