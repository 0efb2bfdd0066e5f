package org.brakewright.analysis.failure;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.chain.Chain;
import org.brakewright.analysis.chain.ChainState;
import org.brakewright.analysis.failure.Failure.BarEnd;
import org.brakewright.analysis.failure.Failure.What;
import org.brakewright.analysis.pedal.TravelModel;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedBuild;

/** Every failure that the car's layout can have, each at the same push. */
public final class Failures {
    /** Push at which failures are compared, N: the most a rule lets the foot give in a braking test. */
    public static final double PUSH = 500;

    private Failures() {}

    /** All failures of a build at {@link #PUSH}. */
    public static List<Failure> of(ResolvedBuild build, Chain chain, TravelModel travel) {
        List<Failure> failures = new ArrayList<>();
        failures.add(new CircuitFailure(build, chain, travel, true).at(PUSH));
        failures.add(new CircuitFailure(build, chain, travel, false).at(PUSH));
        if (build.apply() instanceof ResolvedApply.Tandem tandem
                && tandem.booster().isPresent()) {
            failures.add(booster(build, chain.unassisted(), travel));
        }
        return List.copyOf(failures);
    }

    private static Failure booster(ResolvedBuild build, Chain unassisted, TravelModel travel) {
        ChainState state = unassisted.at(PUSH);
        LeastDeceleration least = LeastDeceleration.bothAxles(build, state);
        double pad = travel.at(state).padM();
        return new Failure(
                What.BOOSTER,
                PUSH,
                state.frontPressure(),
                least.decelerationG(),
                least.loadCase(),
                least.gripLimited(),
                pad,
                0,
                pad > build.pedal().travelToStop(),
                BarEnd.NONE);
    }
}
