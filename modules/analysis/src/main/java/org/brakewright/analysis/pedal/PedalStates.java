package org.brakewright.analysis.pedal;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.pedal.PedalState.AtWork;
import org.brakewright.analysis.pedal.PedalState.GivesWay;
import org.brakewright.analysis.pedal.PedalState.StrokePoint;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedBuild;
import org.jspecify.annotations.Nullable;

/** Follows the pedal through its stroke. */
public final class PedalStates {
    private static final int TABLE = 8;
    private static final int EXTREMES = 64;

    private PedalStates() {}

    /**
     * The pedal at the hard stop.
     *
     * @param lever where it stands
     * @param thrust on the piston that gets the larger one, N
     */
    public record Working(LeverState lever, double thrust) {}

    /**
     * The pedal's state.
     *
     * @param givesWay where it needs less force to go on; null when it never does
     * @param working at the hard stop; null when no push gives it
     * @param withTable whether the points of the stroke are wanted
     */
    public static PedalState of(
            ResolvedBuild build,
            Lever lever,
            @Nullable GivesWay givesWay,
            @Nullable Working working,
            boolean withTable) {
        double freePlay = build.pedal().freePlay();
        double toStop = Math.max(0, build.pedal().travelToStop() - freePlay);
        List<LeverState> way = way(lever, toStop, lever.straight() ? 1 : EXTREMES);
        return new PedalState(
                !lever.straight(),
                way.getFirst().ratio(),
                way.getLast().ratio(),
                way.stream().mapToDouble(LeverState::ratio).min().orElseThrow(),
                way.stream().mapToDouble(LeverState::ratio).max().orElseThrow(),
                greatestOffAxis(way, lean(build.apply())),
                givesWay,
                lever.overCentre().isPresent() ? freePlay + lever.overCentre().getAsDouble() : null,
                working == null ? null : atWork(build.apply(), working),
                withTable && !lever.straight() ? table(way(lever, toStop, TABLE), freePlay) : List.of(),
                PushrodStates.ofBrake(build));
    }

    private static List<LeverState> way(Lever lever, double toStop, int pieces) {
        List<LeverState> way = new ArrayList<>();
        for (int i = 0; i <= pieces; i++) {
            way.add(lever.atPad(toStop * i / pieces));
        }
        return way;
    }

    private static AtWork atWork(ResolvedApply apply, Working working) {
        double inPlane = working.lever().rodAngle();
        double lean = lean(apply);
        double side = side(inPlane, lean);
        return new AtWork(working.lever().ratio(), inPlane, lean, Math.atan(side), working.thrust() * side);
    }

    private static double greatestOffAxis(List<LeverState> way, double lean) {
        return Math.atan(
                way.stream().mapToDouble(at -> side(at.rodAngle(), lean)).max().orElseThrow());
    }

    /** Side force over thrust of a rod that leans in the pedal's plane and across it (rad). */
    private static double side(double inPlane, double lean) {
        return Math.hypot(Math.tan(inPlane), Math.tan(lean));
    }

    /** Lean (rad) across the pedal's plane. */
    private static double lean(ResolvedApply apply) {
        return switch (apply) {
            case ResolvedApply.Twin twin -> twin.bar().rodLean();
            case ResolvedApply.Tandem tandem -> 0;
        };
    }

    private static List<StrokePoint> table(List<LeverState> way, double freePlay) {
        return way.stream()
                .map(at -> new StrokePoint(
                        freePlay + at.padTravel(), at.ratio(), at.rodAngle(), Math.abs(Math.tan(at.rodAngle()))))
                .toList();
    }
}
