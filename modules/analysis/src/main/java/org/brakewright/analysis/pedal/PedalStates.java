package org.brakewright.analysis.pedal;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.pedal.PedalState.AtWork;
import org.brakewright.analysis.pedal.PedalState.StrokePoint;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedApply.Bar;
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
     * @param working at the hard stop; null when no push gives it
     * @param withTable whether the points of the stroke are wanted
     */
    public static PedalState of(ResolvedBuild build, Lever lever, @Nullable Working working, boolean withTable) {
        double freePlay = build.pedal().freePlay();
        double toStop = Math.max(0, build.pedal().travelToStop() - freePlay);
        List<LeverState> way = way(lever, toStop, lever.straight() ? 1 : EXTREMES);
        return new PedalState(
                !lever.straight(),
                way.getFirst().ratio(),
                way.getLast().ratio(),
                way.stream().mapToDouble(LeverState::ratio).min().orElseThrow(),
                way.stream().mapToDouble(LeverState::ratio).max().orElseThrow(),
                lever.overCentre().isPresent() ? freePlay + lever.overCentre().getAsDouble() : null,
                working == null ? null : atWork(build.apply(), working),
                withTable && !lever.straight() ? table(way(lever, toStop, TABLE), freePlay) : List.of());
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
        double lean = apply instanceof ResolvedApply.Twin twin ? lean(twin.bar()) : 0;
        double side = Math.hypot(Math.tan(inPlane), Math.tan(lean));
        return new AtWork(working.lever().ratio(), inPlane, lean, Math.atan(side), working.thrust() * side);
    }

    /** Lean (rad) of both rods with the bar square: clevises and masters are not equally far apart. */
    private static double lean(Bar bar) {
        double inward = (bar.clevisSpacing() - bar.stance().masterSpacing()) / 2;
        return Math.atan(inward / bar.stance().rodLength());
    }

    private static List<StrokePoint> table(List<LeverState> way, double freePlay) {
        return way.stream()
                .map(at -> new StrokePoint(
                        freePlay + at.padTravel(), at.ratio(), at.rodAngle(), Math.abs(Math.tan(at.rodAngle()))))
                .toList();
    }
}
