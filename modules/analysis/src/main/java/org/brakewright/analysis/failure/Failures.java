package org.brakewright.analysis.failure;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.chain.Chain;
import org.brakewright.analysis.pedal.TravelModel;
import org.brakewright.analysis.vehicle.StopsFrom;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedBuild;

/** Every failure that the car's layout can have, each at the same push. */
public final class Failures {
    /** Push at which failures are compared, N: the most a rule lets the foot give in a braking test. */
    public static final double PUSH = StopsFrom.MOST_FORCE;

    private Failures() {}

    /** All failures of a build at {@link #PUSH}. */
    public static List<Failure> of(ResolvedBuild build, Chain chain, TravelModel travel) {
        List<Failure> failures = new ArrayList<>();
        failures.add(new CircuitFailure(build, chain, travel, true).at(PUSH));
        failures.add(new CircuitFailure(build, chain, travel, false).at(PUSH));
        if (build.apply() instanceof ResolvedApply.Tandem tandem
                && tandem.booster().isPresent()) {
            failures.add(new BoosterFailure(build, chain, travel).at(PUSH));
        }
        return List.copyOf(failures);
    }
}
