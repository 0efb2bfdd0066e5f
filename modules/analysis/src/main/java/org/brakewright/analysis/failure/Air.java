package org.brakewright.analysis.failure;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.chain.Chain;
import org.brakewright.analysis.chain.Pushed;
import org.brakewright.analysis.failure.Failure.BarEnd;
import org.brakewright.analysis.failure.Failure.What;
import org.brakewright.analysis.failure.LeastDeceleration.Braked;
import org.brakewright.analysis.hydraulics.FailedTwinChain;
import org.brakewright.analysis.hydraulics.Piston;
import org.brakewright.analysis.hydraulics.PistonState;
import org.brakewright.kernel.lever.FailedBar;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.vehicle.AxleEnd;

/**
 * Air in one circuit: its piston goes further for the same pressure and may bottom, the bar tilts with it, the pedal
 * falls.
 */
final class Air implements WeakCar {
    private final ResolvedBuild build;
    private final Chain whole;
    private final Chain open;
    private final Chain chain;
    private final AxleEnd piston;

    Air(ResolvedBuild build, Chain whole, AxleEnd piston) {
        this.build = build;
        this.whole = whole;
        this.open = whole.failed(piston);
        this.chain = whole.aired(piston, build.aims().airInOneCircuit());
        this.piston = piston;
    }

    @Override
    public Chain chain() {
        return chain;
    }

    @Override
    public Failure at(double push) {
        Remaining left = Remaining.of(build, chain, push);
        Pushed pushed = left.pushed();
        LeastDeceleration least = least(pushed);
        Pushed intact = whole.atPedalForce(pushed.state().pedalForce());
        BarEnd barEnd = barEnd(pushed);
        boolean ended = ended(pushed);
        return new Failure(
                what(),
                push,
                livePressure(pushed),
                least.decelerationG(),
                least.loadCase(),
                least.gripLimited(),
                pushed.padTravel(),
                pushed.padTravel() - intact.padTravel(),
                left.reachesStop(),
                barEnd,
                ended && barEnd != BarEnd.BINDS_AT_TILT_LIMIT,
                Remaining.share(pushed, intact),
                List.of());
    }

    @Override
    public LeastDeceleration least(Pushed pushed) {
        List<Braked> braked = new ArrayList<>();
        for (AxleEnd axle : AxleEnd.values()) {
            for (AxleEnd by : AxleEnd.values()) {
                Piston from = by == AxleEnd.FRONT
                        ? chain.apply().front()
                        : chain.apply().rear();
                braked.add(new Braked(axle, from.feeds().share(axle), chain.force(axle, by, pushed.apply())));
            }
        }
        return LeastDeceleration.held(build, braked);
    }

    private What what() {
        if (build.apply().diagonal()) {
            return piston == AxleEnd.FRONT ? What.AIR_IN_FIRST_DIAGONAL : What.AIR_IN_SECOND_DIAGONAL;
        }
        return piston == AxleEnd.FRONT ? What.AIR_IN_FRONT_CIRCUIT : What.AIR_IN_REAR_CIRCUIT;
    }

    private double livePressure(Pushed pushed) {
        boolean first = piston == AxleEnd.REAR;
        Piston live = first ? chain.apply().front() : chain.apply().rear();
        PistonState state = first ? pushed.apply().front() : pushed.apply().rear();
        AxleEnd axle = first || build.apply().diagonal() ? AxleEnd.FRONT : AxleEnd.REAR;
        return live.feeds().line(axle).atWheels(state.pressure());
    }

    /** Whether the soft piston has come as far as one with its circuit open. */
    private boolean ended(Pushed pushed) {
        Pushed opened = open.pushed(pushed.state().thrust());
        return piston == AxleEnd.FRONT
                ? pushed.frontStroke() >= opened.frontStroke()
                : pushed.rearStroke() >= opened.rearStroke();
    }

    private BarEnd barEnd(Pushed pushed) {
        if (!(open.apply() instanceof FailedTwinChain bar) || !ended(pushed)) {
            return BarEnd.NONE;
        }
        double live = piston == AxleEnd.FRONT ? pushed.rearStroke() : pushed.frontStroke();
        return bar.fallen(live).stop() == FailedBar.Stop.ARTICULATION
                ? BarEnd.BINDS_AT_TILT_LIMIT
                : BarEnd.LEANS_ON_BOTTOMED_MASTER;
    }
}
