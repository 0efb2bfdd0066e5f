package org.brakewright.analysis.pedal;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The pedal through its stroke.
 *
 * @param mechanism whether its points are known; without them the ratio is taken to stay the same
 * @param ratioAtRest pad travel over rod travel with the pedal at rest
 * @param ratioAtStop where it meets its stop, or at the runaway ratio before it ({@link Lever#RUNAWAY})
 * @param leastRatio on the way to the stop
 * @param greatestRatio on the way to the stop
 * @param greatestRodOffAxisRad largest angle between rod and master's axis in space on the way to the stop, as far as it is
 *     known: in the pedal's plane only with a mechanism
 * @param givesWay null when more travel always takes more force
 * @param overCentreM pad travel from free position at which the rod comes into line with the pivot; null when the stop is
 *     met before
 * @param atHardStop null when no push gives the hard stop
 * @param stroke the way to the stop; empty without a mechanism and where only judgements are wanted
 * @param pushrods how the rods are cut; null without their thread and clevis, and where their length is not known
 */
public record PedalState(
        boolean mechanism,
        double ratioAtRest,
        double ratioAtStop,
        double leastRatio,
        double greatestRatio,
        double greatestRodOffAxisRad,
        @Nullable GivesWay givesWay,
        @Nullable Double overCentreM,
        @Nullable AtWork atHardStop,
        List<StrokePoint> stroke,
        @Nullable PushrodState pushrods) {

    /**
     * Where the pedal needs less force to go on: a mechanism near over-centre.
     *
     * @param pedalForceN largest force that the pedal withstands
     * @param padTravelM there, from free position
     */
    public record GivesWay(double pedalForceN, double padTravelM) {}

    /**
     * The pedal at the hard stop.
     *
     * @param ratio there
     * @param rodAngleRad between rod and master's axis in the pedal's plane; 0 without a mechanism
     * @param rodLeanRad of a balance bar's rods seen from above, plus when their far ends lie closer together; 0 without bar
     * @param rodOffAxisRad both together: between rod and master's axis in space
     * @param sideForceN square to the axis on the piston that gets the larger thrust
     */
    public record AtWork(
            double ratio, double rodAngleRad, double rodLeanRad, double rodOffAxisRad, double sideForceN) {}

    /**
     * One point of the stroke.
     *
     * @param padTravelM from free position
     * @param ratio there
     * @param rodAngleRad in the pedal's plane
     * @param sideShare side force on the piston over its thrust, of this angle alone
     */
    public record StrokePoint(double padTravelM, double ratio, double rodAngleRad, double sideShare) {}
}
