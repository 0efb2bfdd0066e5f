package org.brakewright.analysis.failure;

import java.util.List;
import org.brakewright.analysis.chain.Chain;
import org.brakewright.analysis.chain.Pushed;
import org.brakewright.analysis.failure.Failure.What;
import org.brakewright.analysis.failure.LeastDeceleration.Braked;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.vehicle.AxleEnd;

/**
 * All brakes hot: the friction falls, pressures and travel stay. Fluid that boils is another matter.
 *
 * @param build of the car
 * @param chain of the car
 */
record Fade(ResolvedBuild build, Chain chain) implements WeakCar {

    @Override
    public Failure at(double push) {
        Remaining left = Remaining.of(build, chain, push);
        double whole = left.pushed().state().totalForce();
        double share = whole == 0 ? 0 : (front(left.pushed()) + rear(left.pushed())) / whole;
        return Failure.pedalStays(What.FADE, push, left, least(left.pushed()), share);
    }

    @Override
    public LeastDeceleration least(Pushed pushed) {
        return LeastDeceleration.held(
                build, List.of(new Braked(AxleEnd.FRONT, 1, front(pushed)), new Braked(AxleEnd.REAR, 1, rear(pushed))));
    }

    private double front(Pushed pushed) {
        return build.front().frictionStates().hot() * pushed.state().frontForce();
    }

    private double rear(Pushed pushed) {
        return build.rear().frictionStates().hot() * pushed.state().rearForce();
    }
}
