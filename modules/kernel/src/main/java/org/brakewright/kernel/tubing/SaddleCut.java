package org.brakewright.kernel.tubing;

import java.util.List;
import java.util.stream.IntStream;

/**
 * The end of a round tube that meets the side of another: the paper wrapped round it ends in the curve in which both
 * cylinders cross.
 *
 * <p>Source: plane geometry, the distance of a point on one cylinder from the axis of the other.
 *
 * @param branchDiameter of the tube that is cut, m
 * @param mainDiameter of the tube it meets, m
 * @param angle between both axes, rad, above 0, below pi
 * @param offset by which the axes miss each other, m, to the side that a quarter turn round the branch points to
 */
public record SaddleCut(double branchDiameter, double mainDiameter, double angle, double offset) {
    public SaddleCut {
        Demand.positive("branchDiameter", branchDiameter);
        Demand.positive("mainDiameter", mainDiameter);
        Demand.belowHalfTurn("angle", angle);
        Demand.holds(
                branchDiameter / 2 + Math.abs(offset) <= mainDiameter / 2,
                "branchDiameter and twice the offset must fit into mainDiameter, " + mainDiameter + ", are "
                        + branchDiameter + " and " + 2 * offset);
    }

    /**
     * A point of the paper, laid flat.
     *
     * @param across round the tube, m
     * @param up along the tube, m
     */
    public record Flat(double across, double up) {}

    /**
     * Height (m) of the edge along the branch over the point where its axis passes the main one, at an angle (rad) around
     * the branch from the side that leans over the main tube.
     */
    public double edge(double around) {
        double radius = branchDiameter / 2;
        double aside = radius * Math.sin(around) - offset;
        double over = Math.sqrt(Math.max(0, mainDiameter * mainDiameter / 4 - aside * aside));
        return (over + radius * Math.cos(around) * Math.cos(angle)) / Math.sin(angle);
    }

    /** The edge once round, laid flat, in equal steps of at least 4; the last point closes on the first. */
    public List<Flat> unrolled(int steps) {
        Demand.holds(steps >= 4, "steps must be 4 or more, are " + steps);
        return IntStream.rangeClosed(0, steps)
                .mapToObj(i -> flat(2 * Math.PI * i / steps))
                .toList();
    }

    private Flat flat(double around) {
        return new Flat(branchDiameter / 2 * around, edge(around));
    }
}
