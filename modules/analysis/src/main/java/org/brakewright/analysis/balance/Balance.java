package org.brakewright.analysis.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakewright.analysis.chain.ChainState;
import org.brakewright.kernel.dynamics.AxleLoads;

/** Balance of one load case: who locks first, and when. */
public final class Balance {
    /** Below this pads and shoes only come to disc and drum, and who is first means nothing, g. */
    public static final double FIRST_G = 0.05;

    private static final double SAME = 1e-4;

    private final Sweep sweep;
    private final AxleLoads loads;

    /** The balance of a swept chain under given axle loads. */
    public Balance(Sweep sweep, AxleLoads loads) {
        this.sweep = sweep;
        this.loads = loads;
    }

    /** Deceleration in g of a state. */
    public double decelerationG(ChainState state) {
        return state.totalForce() / loads.weight();
    }

    /**
     * The axle that locks first at a grip.
     *
     * @return empty when no pedal force locks a wheel
     */
    public Optional<Lock> lock(double grip) {
        Optional<ChainState> front =
                sweep.firstRise(state -> state.frontForce() - grip * loads.front(decelerationG(state)));
        Optional<ChainState> rear = sweep.firstRise(state -> rearExcess(state, grip));
        if (front.isEmpty() && rear.isEmpty()) {
            return Optional.empty();
        }
        double frontG = front.map(this::decelerationG).orElse(Double.POSITIVE_INFINITY);
        double rearG = rear.map(this::decelerationG).orElse(Double.POSITIVE_INFINITY);
        double first = Math.min(frontG, rearG);
        return Optional.of(new Lock(grip, axle(frontG, rearG), first, first / grip));
    }

    /** Stretches over which the rear would lock first, rising, from {@link #FIRST_G} to the end of the sweep. */
    public List<RearFirst> rearFirst() {
        List<RearFirst> stretches = new ArrayList<>();
        double beyond = 0;
        Optional<ChainState> start = startState();
        if (start.isPresent() && rearAhead(start.get()) > 0) {
            Optional<ChainState> end =
                    sweep.firstRise(state -> -rearAhead(state), start.get().pedalForce());
            stretches.add(new RearFirst(0, end.map(this::decelerationG).orElse(null)));
            beyond = end.map(ChainState::pedalForce).orElse(Double.POSITIVE_INFINITY);
        } else if (start.isPresent()) {
            beyond = start.get().pedalForce();
        }
        while (beyond < Double.POSITIVE_INFINITY) {
            Optional<ChainState> from = sweep.firstRise(this::rearAhead, beyond);
            if (from.isEmpty()) {
                break;
            }
            Optional<ChainState> to =
                    sweep.firstRise(state -> -rearAhead(state), from.get().pedalForce());
            stretches.add(new RearFirst(
                    decelerationG(from.get()), to.map(this::decelerationG).orElse(null)));
            beyond = to.map(ChainState::pedalForce).orElse(Double.POSITIVE_INFINITY);
        }
        return stretches;
    }

    private Optional<ChainState> startState() {
        return sweep.firstRise(state -> decelerationG(state) - FIRST_G);
    }

    /** Positive where the rear uses more grip than the front, N2 scaled to N: f_r N_f N_r - f_f N_f N_r. */
    private double rearAhead(ChainState state) {
        double z = decelerationG(state);
        return (state.rearForce() * loads.front(z) - state.frontForce() * loads.rear(z)) / loads.weight();
    }

    private double rearExcess(ChainState state, double grip) {
        return state.rearForce() - grip * Math.max(0, loads.rear(decelerationG(state)));
    }

    private static Lock.Axle axle(double frontG, double rearG) {
        if (Math.abs(frontG - rearG) <= SAME * Math.min(frontG, rearG)) {
            return Lock.Axle.BOTH;
        }
        return frontG < rearG ? Lock.Axle.FRONT : Lock.Axle.REAR;
    }
}
