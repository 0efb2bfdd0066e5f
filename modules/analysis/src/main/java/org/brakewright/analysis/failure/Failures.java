package org.brakewright.analysis.failure;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.chain.Chain;
import org.brakewright.analysis.chain.ChainState;
import org.brakewright.analysis.failure.Failure.BarEnd;
import org.brakewright.analysis.failure.Failure.What;
import org.brakewright.analysis.vehicle.StopsFrom;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.vehicle.AxleEnd;

/** Every failure that the car's layout can have, each at the same push. */
public final class Failures {
    /** Push at which failures are compared, N: the most a rule lets the foot give in a braking test. */
    public static final double PUSH = StopsFrom.MOST_FORCE;

    private Failures() {}

    /** All failures of a build at {@link #PUSH}. */
    public static List<Failure> of(ResolvedBuild build, Chain chain) {
        List<Failure> failures = new ArrayList<>();
        failures.add(new CircuitFailure(build, chain, AxleEnd.FRONT).at(PUSH));
        failures.add(new CircuitFailure(build, chain, AxleEnd.REAR).at(PUSH));
        if (build.apply() instanceof ResolvedApply.Tandem tandem
                && tandem.booster().isPresent()) {
            failures.add(booster(build, chain.unassisted()));
        }
        return List.copyOf(failures);
    }

    /** The booster's help lost: the foot alone. */
    private static Failure booster(ResolvedBuild build, Chain unassisted) {
        Remaining left = Remaining.of(build, unassisted, PUSH);
        ChainState state = left.pushed().state();
        LeastDeceleration least = LeastDeceleration.bothAxles(build, state);
        return new Failure(
                What.BOOSTER,
                PUSH,
                state.frontPressure(),
                least.decelerationG(),
                least.loadCase(),
                least.gripLimited(),
                left.pushed().padTravel(),
                0,
                left.reachesStop(),
                BarEnd.NONE);
    }
}
