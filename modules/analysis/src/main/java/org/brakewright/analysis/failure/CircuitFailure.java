package org.brakewright.analysis.failure;

import org.brakewright.analysis.chain.Chain;
import org.brakewright.analysis.chain.ChainState;
import org.brakewright.analysis.failure.Failure.BarEnd;
import org.brakewright.analysis.failure.Failure.What;
import org.brakewright.analysis.hydraulics.Strokes;
import org.brakewright.analysis.pedal.Travel;
import org.brakewright.analysis.pedal.TravelModel;
import org.brakewright.kernel.lever.BalanceBar;
import org.brakewright.kernel.lever.FailedBar;
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
        double usable = UsablePush.of(push, this::beyondEnd);
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

    private double beyondEnd(double push) {
        ChainState state = chain.at(push);
        double pedal = travelAt(state).padM() - build.pedal().travelToStop();
        double live = (liveStroke(state) - stroke(!frontFailed)) * build.pedal().ratio();
        return Math.max(pedal, live);
    }

    private Travel travelAt(ChainState state) {
        double live = liveStroke(state);
        double failed = failedStroke(live);
        return travel.travel(state.pedalForce(), frontFailed ? failed : live, frontFailed ? live : failed);
    }

    private double liveStroke(ChainState state) {
        return frontFailed ? travel.rearStroke(state.rearPressure()) : travel.frontStroke(state.frontPressure());
    }

    private double failedStroke(double live) {
        if (!(build.apply() instanceof ResolvedApply.Twin twin)) {
            return stroke(frontFailed);
        }
        FailedBar bar = failedBar(twin, live);
        return frontFailed ? bar.frontTravel() : bar.rearTravel();
    }

    private BarEnd barEnd(ChainState state) {
        if (!(build.apply() instanceof ResolvedApply.Twin twin)) {
            return BarEnd.NONE;
        }
        return switch (failedBar(twin, liveStroke(state)).stop()) {
            case ARTICULATION -> BarEnd.BINDS_AT_TILT_LIMIT;
            case MASTER_BOTTOMED -> BarEnd.LEANS_ON_BOTTOMED_MASTER;
        };
    }

    private FailedBar failedBar(ResolvedApply.Twin twin, double live) {
        ResolvedApply.Bar bar = twin.bar();
        return new BalanceBar(bar.clevisSpacing(), bar.offset())
                .failed(
                        frontFailed
                                ? org.brakewright.kernel.lever.BarEnd.FRONT
                                : org.brakewright.kernel.lever.BarEnd.REAR,
                        live,
                        stroke(frontFailed),
                        bar.tiltLimit());
    }

    private double stroke(boolean front) {
        return front ? Strokes.front(build.apply()) : Strokes.rear(build.apply());
    }
}
