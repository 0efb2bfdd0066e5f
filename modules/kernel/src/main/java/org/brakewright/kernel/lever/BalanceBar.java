package org.brakewright.kernel.lever;

/**
 * A bar between two clevises, pushed at a bearing that can be moved along it.
 *
 * <p>Source: statics of a beam on three forces; F. Puhn, Brake Handbook (from memory).
 *
 * @param clevisSpacing centre to centre, m
 * @param offset of the bearing from the middle, plus toward the front clevis and so to more front brake, m
 */
public record BalanceBar(double clevisSpacing, double offset) {
    public BalanceBar {
        Demand.positive("clevisSpacing", clevisSpacing);
        Demand.within("offset", offset, Math.abs(offset) < clevisSpacing / 2, "within half clevisSpacing either way");
    }

    /** Share of the push that the front master gets while both rods are parallel to it and the pins in line. */
    public double frontShare() {
        return 0.5 + offset / clevisSpacing;
    }

    /** Offset (m) that gives a front share (0 to 1) at a clevis spacing (m). */
    public static double offsetFor(double frontShare, double clevisSpacing) {
        return (frontShare - 0.5) * clevisSpacing;
    }

    /**
     * Front share of the thrust along the push, with tilt, set-back pins and leaning rods: moments about the bearing.
     *
     * @return between 0 and 1 while both rods push; outside when the bar would turn away under load
     */
    public double frontShare(BarAttitude attitude) {
        double front = arm(frontArm(), attitude.tilt(), attitude.setBack(), attitude.frontLean());
        double rear = arm(rearArm(), -attitude.tilt(), attitude.setBack(), attitude.rearLean());
        return rear / (front + rear);
    }

    /** Travel (m) of the bearing when the clevises travel (m): by virtual work the share-weighted mean. */
    public double bearingTravel(double frontTravel, double rearTravel) {
        return frontShare() * frontTravel + (1 - frontShare()) * rearTravel;
    }

    /** Tilt (rad) when the clevises travel (m), plus when the front one is ahead; they keep their spacing. */
    public double tilt(double frontTravel, double rearTravel) {
        return Math.atan((frontTravel - rearTravel) / clevisSpacing);
    }

    /** The bar after turns of its adjuster, plus toward the front clevis, with a movement per turn (m). */
    public BalanceBar adjusted(double turns, double movementPerTurn) {
        return new BalanceBar(clevisSpacing, offset + turns * movementPerTurn);
    }

    /**
     * The bar when one circuit holds no pressure: its rod runs ahead until the bar's largest tilt stops it, or its
     * master bottoms. At the largest tilt the bar and the pedal are one piece: the live rod takes the whole push, and
     * the pedal takes the twist. On a bottomed master the bar still levers, and the live rod keeps its set share.
     *
     * @param failed end whose circuit is open
     * @param liveTravel of the live clevis at the pressure in question, m
     * @param failedStroke of the failed clevis until its master bottoms, m
     * @param largestTilt at which the bar turns no further, rad
     */
    public FailedBar failed(BarEnd failed, double liveTravel, double failedStroke, double largestTilt) {
        Demand.within("largestTilt", largestTilt, largestTilt >= 0 && largestTilt < Math.PI / 2, "0 to a quarter turn");
        double tilted = liveTravel + clevisSpacing * Math.tan(largestTilt);
        boolean bottomed = failedStroke < tilted;
        double failedTravel = Math.min(failedStroke, tilted);
        double front = failed == BarEnd.FRONT ? failedTravel : liveTravel;
        double rear = failed == BarEnd.REAR ? failedTravel : liveTravel;
        double setShare = failed == BarEnd.FRONT ? 1 - frontShare() : frontShare();
        return new FailedBar(
                front,
                rear,
                bearingTravel(front, rear),
                tilt(front, rear),
                bottomed ? setShare : 1,
                bottomed ? FailedBar.Stop.MASTER_BOTTOMED : FailedBar.Stop.ARTICULATION);
    }

    private double frontArm() {
        return clevisSpacing / 2 - offset;
    }

    private double rearArm() {
        return clevisSpacing / 2 + offset;
    }

    /** Arm of a rod's thrust about the bearing, for an end that a tilt moves ahead. */
    private static double arm(double along, double ahead, double setBack, double lean) {
        double across = along * Math.cos(ahead) + setBack * Math.sin(ahead);
        double forward = along * Math.sin(ahead) - setBack * Math.cos(ahead);
        return across + forward * Math.tan(lean);
    }
}
