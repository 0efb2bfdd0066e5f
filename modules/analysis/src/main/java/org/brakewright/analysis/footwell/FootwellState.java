package org.brakewright.analysis.footwell;

import java.util.List;
import org.brakewright.model.resolved.ResolvedMount.Place;
import org.jspecify.annotations.Nullable;

/**
 * The pedals side by side. Places are x forward, y left, z up from the zero of the lines.
 *
 * @param shoeM breadth of the foot in its shoe
 * @param pads from the left
 * @param gaps between neighbours, from the left
 * @param spacing by the published rule for cars
 * @param sweeps what comes near, nearest first
 * @param heelToe one foot on brake and throttle; null when no push gives the hard stop
 */
public record FootwellState(
        double shoeM,
        List<PadState> pads,
        List<GapState> gaps,
        List<SpacingState> spacing,
        List<SweepState> sweeps,
        @Nullable HeelToeState heelToe) {

    /** Pedals. */
    public enum Which {
        CLUTCH,
        BRAKE,
        THROTTLE
    }

    /**
     * A pad.
     *
     * @param which pedal
     * @param breadthM across the car
     * @param heightM along the arm
     * @param pivot it swings about
     * @param rest its middle at rest
     * @param working its middle at the hard stop, of the brake only; null for others and when no push gives it
     * @param end its middle at the end of its travel
     */
    public record PadState(
            Which which,
            double breadthM,
            double heightM,
            Place pivot,
            Place rest,
            @Nullable Place working,
            Place end) {}

    /**
     * Between two neighbours.
     *
     * @param left pedal
     * @param right pedal
     * @param gapM from edge to edge
     * @param stepAtRestM how much nearer to the driver the right pad stands
     * @param stepWorkingM the same with the brake at the hard stop; null when no push gives it
     * @param overhangM how far a foot in the middle of the narrower pad reaches past its edge
     */
    public record GapState(
            Which left,
            Which right,
            double gapM,
            double stepAtRestM,
            @Nullable Double stepWorkingM,
            double overhangM) {}

    /** Letters of UN R35. */
    public enum Letter {
        /** Throttle to brake, edge to edge. */
        E,
        /** Brake to clutch, edge to edge. */
        F,
        /** Clutch to the wall on its left. */
        G,
        /** Brake to the wall on its right. */
        H,
        /** Brake to the wall on its left. */
        J
    }

    /**
     * A distance of the published rule.
     *
     * @param letter which
     * @param foundM here
     * @param leastM allowed
     * @param mostM allowed; null when there is none
     */
    public record SpacingState(
            Letter letter,
            double foundM,
            double leastM,
            @Nullable Double mostM) {
        /** Whether it is as the rule wants it. */
        public boolean met() {
            return foundM >= leastM && (mostM == null || foundM <= mostM);
        }
    }

    /**
     * How near a pedal comes to something on its way.
     *
     * @param which pedal
     * @param obstacle its name
     * @param gapM least distance; not above zero when they touch
     * @param travelM of the pad where that is
     * @param at the place on the pedal
     * @param shiftM least shift of the pedal to the left (minus: right) that makes room; null when there is room or none helps
     */
    public record SweepState(
            Which which,
            String obstacle,
            double gapM,
            double travelM,
            Place at,
            @Nullable Double shiftM) {}

    /**
     * One foot that brakes hard and rolls onto the throttle.
     *
     * @param needsM breadth of shoe that covers both
     * @param stepM how much nearer to the driver the throttle stands while the brake is at the hard stop
     * @param highestM step up to which the foot turns out
     * @param lowestM step down to which the foot turns in, and pushes the throttle for a blip
     * @param asideM how far the throttle is to come to the left for the shoe; 0 when it covers both
     * @param forwardM how far the throttle is to go forward (minus: back) for the ankle; 0 when it turns that far
     */
    public record HeelToeState(
            double needsM, double stepM, double highestM, double lowestM, double asideM, double forwardM) {
        /** Whether it can be done. */
        public boolean works() {
            return asideM == 0 && forwardM == 0;
        }
    }
}
