package org.brakewright.analysis.failure;

import java.util.List;
import org.brakewright.analysis.chain.Chain;
import org.brakewright.analysis.chain.Pushed;
import org.brakewright.analysis.failure.Failure.BarEnd;
import org.brakewright.analysis.failure.Failure.What;
import org.brakewright.model.resolved.ResolvedBuild;

/**
 * The booster's help lost: the foot alone.
 *
 * @param build of the car
 * @param whole with the booster
 * @param chain without it
 */
record BoosterFailure(ResolvedBuild build, Chain whole, Chain chain) implements WeakCar {

    @Override
    public Failure at(double push) {
        Remaining left = Remaining.of(build, chain, push);
        LeastDeceleration least = least(left.pushed());
        return new Failure(
                What.BOOSTER,
                push,
                left.pushed().state().frontPressure(),
                least.decelerationG(),
                least.loadCase(),
                least.gripLimited(),
                left.pushed().padTravel(),
                0,
                left.reachesStop(),
                BarEnd.NONE,
                false,
                Remaining.share(
                        left.pushed(), whole.atPedalForce(left.pushed().state().pedalForce())),
                List.of());
    }

    @Override
    public LeastDeceleration least(Pushed pushed) {
        return LeastDeceleration.bothAxles(build, pushed.state());
    }
}
