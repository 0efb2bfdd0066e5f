package org.brakewright.analysis.failure;

import org.brakewright.analysis.chain.Chain;
import org.brakewright.analysis.chain.Pushed;
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
        Pushed helped = whole.atPedalForce(left.pushed().state().pedalForce());
        return Failure.pedalStays(
                What.BOOSTER, push, left, least(left.pushed()), Remaining.share(left.pushed(), helped));
    }

    @Override
    public LeastDeceleration least(Pushed pushed) {
        return LeastDeceleration.bothAxles(build, pushed.state());
    }
}
