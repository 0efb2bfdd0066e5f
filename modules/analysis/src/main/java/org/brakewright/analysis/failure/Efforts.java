package org.brakewright.analysis.failure;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.brakewright.analysis.chain.Chain;
import org.brakewright.analysis.chain.Pushed;
import org.brakewright.kernel.roots.Crossing;
import org.brakewright.model.resolved.ResolvedBuild;

/** Finds the pushes at which a car with something failed slows as it is asked to. */
final class Efforts {
    private Efforts() {}

    /** Efforts at decelerations in g, up to the panic push. */
    static List<EffortToMeet> of(ResolvedBuild build, WeakCar car, List<Double> demands) {
        Pushed most = Remaining.of(build, car.chain(), build.aims().panicPush()).pushed();
        double mostG = car.least(most).decelerationG();
        List<EffortToMeet> efforts = new ArrayList<>();
        for (double demand : demands) {
            OptionalDouble push = mostG < demand ? OptionalDouble.empty() : push(car, demand, most);
            efforts.add(new EffortToMeet(demand, push.isPresent() ? push.getAsDouble() : null));
        }
        return List.copyOf(efforts);
    }

    private static OptionalDouble push(WeakCar car, double demand, Pushed most) {
        Chain chain = car.chain();
        OptionalDouble thrust = Crossing.between(
                tried -> car.least(chain.pushed(tried)).decelerationG() - demand,
                0,
                most.state().thrust());
        return thrust.isEmpty()
                ? thrust
                : OptionalDouble.of(chain.pushed(thrust.getAsDouble()).state().pedalForce());
    }
}
