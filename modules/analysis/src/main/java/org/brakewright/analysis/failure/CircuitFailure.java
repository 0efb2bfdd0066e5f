package org.brakewright.analysis.failure;

import java.util.OptionalDouble;
import org.brakewright.analysis.chain.Chain;
import org.brakewright.analysis.chain.ChainState;
import org.brakewright.analysis.failure.Failure.BarEnd;
import org.brakewright.analysis.failure.Failure.What;
import org.brakewright.analysis.hydraulics.Strokes;
import org.brakewright.analysis.pedal.Travel;
import org.brakewright.analysis.pedal.TravelModel;
import org.brakewright.kernel.roots.Crossing;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedBuild;

/**
 * One circuit failed: its master or chamber runs to the end of its stroke, or the bar to its tilt limit, and the pedal
 * falls that much further.
 *
 * <p>While the failed master stands at its end, the bar leans on it and the live one keeps its share of the push. A bar
 * bound at its tilt limit would pass on more; that is not counted on, and the finding says that it binds.
 */
final class CircuitFailure {
    private final ResolvedBuild build;
    private final Chain chain;
    private final TravelModel travel;
    private final boolean frontFailed;

    CircuitFailure(ResolvedBuild build, Chain chain, TravelModel travel, boolean frontFailed) {
        this.build = build;
        this.chain = chain;
        this.travel = travel;
        this.frontFailed = frontFailed;
    }

    /** The failure at a push (N) at the pad. */
    Failure at(double push) {
        double usable = usablePush(push);
        ChainState state = chain.at(usable);
        double liveForce = frontFailed ? state.rearForce() : state.frontForce();
        LeastDeceleration least = LeastDeceleration.oneAxle(build, liveForce, !frontFailed);
        Travel fallen = travelAt(state);
        return new Failure(
                frontFailed ? What.FRONT_CIRCUIT : What.REAR_CIRCUIT,
                push,
                frontFailed ? state.rearPressure() : state.frontPressure(),
                least.decelerationG(),
                least.loadCase(),
                least.gripLimited(),
                fallen.padM(),
                fallen.padM() - travel.at(state).padM(),
                usable < push,
                barEnd(state));
    }

    private double usablePush(double push) {
        double stop = build.pedal().travelToStop();
        if (travelAt(chain.at(push)).padM() <= stop && liveStrokeLeft(chain.at(push)) >= 0) {
            return push;
        }
        OptionalDouble atStop = Crossing.between(
                force -> Math.max(
                        travelAt(chain.at(force)).padM() - stop,
                        -liveStrokeLeft(chain.at(force)) * build.pedal().ratio()),
                0,
                push);
        return atStop.orElse(0);
    }

    private Travel travelAt(ChainState state) {
        double live = liveStroke(state);
        double failed = failedStroke(live);
        return travel.travel(state.pedalForce(), frontFailed ? failed : live, frontFailed ? live : failed);
    }

    private double liveStroke(ChainState state) {
        return frontFailed ? travel.rearStroke(state.rearPressure()) : travel.frontStroke(state.frontPressure());
    }

    private double liveStrokeLeft(ChainState state) {
        return stroke(!frontFailed) - liveStroke(state);
    }

    private double failedStroke(double live) {
        double end = stroke(frontFailed);
        return build.apply() instanceof ResolvedApply.Twin twin ? Math.min(end, live + reach(twin.bar())) : end;
    }

    private BarEnd barEnd(ChainState state) {
        if (!(build.apply() instanceof ResolvedApply.Twin twin)) {
            return BarEnd.NONE;
        }
        return liveStroke(state) + reach(twin.bar()) < stroke(frontFailed)
                ? BarEnd.BINDS_AT_TILT_LIMIT
                : BarEnd.LEANS_ON_BOTTOMED_MASTER;
    }

    /** How far (m) one rod can run ahead of the other before the bar binds. */
    private static double reach(ResolvedApply.Bar bar) {
        return bar.clevisSpacing() * Math.tan(bar.tiltLimit());
    }

    private double stroke(boolean front) {
        return front ? Strokes.front(build.apply()) : Strokes.rear(build.apply());
    }
}
