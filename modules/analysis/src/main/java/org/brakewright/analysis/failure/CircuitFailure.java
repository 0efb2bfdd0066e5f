package org.brakewright.analysis.failure;

import java.util.List;
import org.brakewright.analysis.chain.Chain;
import org.brakewright.analysis.chain.ChainState;
import org.brakewright.analysis.chain.Pushed;
import org.brakewright.analysis.failure.Failure.BarEnd;
import org.brakewright.analysis.failure.Failure.What;
import org.brakewright.analysis.hydraulics.FailedTwinChain;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.vehicle.AxleEnd;

/**
 * One circuit failed: its master or chamber runs to the end of its stroke, or the bar to its tilt limit, and the pedal
 * falls that much further.
 */
final class CircuitFailure implements WeakCar {
    private final ResolvedBuild build;
    private final Chain whole;
    private final Chain chain;
    private final AxleEnd piston;

    CircuitFailure(ResolvedBuild build, Chain whole, AxleEnd piston) {
        this.build = build;
        this.whole = whole;
        this.chain = whole.failed(piston);
        this.piston = piston;
    }

    @Override
    public Chain chain() {
        return chain;
    }

    @Override
    public Failure at(double push) {
        Remaining left = Remaining.of(build, chain, push);
        ChainState state = left.pushed().state();
        LeastDeceleration least = least(left.pushed());
        Pushed intact = whole.atPedalForce(state.pedalForce());
        BarEnd barEnd = barEnd(livePiston(left));
        return new Failure(
                what(),
                push,
                livePressure(state),
                least.decelerationG(),
                least.loadCase(),
                least.gripLimited(),
                left.pushed().padTravel(),
                left.pushed().padTravel() - intact.padTravel(),
                left.reachesStop(),
                barEnd,
                barEnd != BarEnd.BINDS_AT_TILT_LIMIT,
                Remaining.share(left.pushed(), intact),
                List.of());
    }

    private What what() {
        if (build.apply().diagonal()) {
            return piston == AxleEnd.FRONT ? What.FIRST_DIAGONAL : What.SECOND_DIAGONAL;
        }
        return piston == AxleEnd.FRONT ? What.FRONT_CIRCUIT : What.REAR_CIRCUIT;
    }

    @Override
    public LeastDeceleration least(Pushed pushed) {
        ChainState state = pushed.state();
        if (build.apply().diagonal()) {
            return LeastDeceleration.oneDiagonal(build, state);
        }
        double liveForce = piston == AxleEnd.FRONT ? state.rearForce() : state.frontForce();
        return LeastDeceleration.oneAxle(build, liveForce, piston == AxleEnd.REAR);
    }

    private double livePressure(ChainState state) {
        return build.apply().diagonal() || piston == AxleEnd.REAR ? state.frontPressure() : state.rearPressure();
    }

    private double livePiston(Remaining left) {
        return piston == AxleEnd.FRONT
                ? left.pushed().rearStroke()
                : left.pushed().frontStroke();
    }

    private BarEnd barEnd(double liveStroke) {
        if (!(chain.apply() instanceof FailedTwinChain bar)) {
            return BarEnd.NONE;
        }
        return switch (bar.fallen(liveStroke).stop()) {
            case ARTICULATION -> BarEnd.BINDS_AT_TILT_LIMIT;
            case MASTER_BOTTOMED -> BarEnd.LEANS_ON_BOTTOMED_MASTER;
        };
    }
}
