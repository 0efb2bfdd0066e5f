package org.brakewright.analysis.failure;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.chain.Chain;
import org.brakewright.analysis.failure.Failure.What;
import org.brakewright.analysis.vehicle.StopsFrom;
import org.brakewright.kernel.dynamics.Gravity;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.vehicle.AxleEnd;

/** Every failure that the car's layout can have, each at the same push. */
public final class Failures {
    /** Push at which failures are compared, N: the most a rule lets the foot give in a braking test. */
    public static final double PUSH = StopsFrom.MOST_FORCE;

    /**
     * Asked of a car with something failed, g: UN R13-H and FMVSS 135 (from memory), a state's assessment manual of 2013
     * (p. 38), and its half of the weight for a dead booster (p. 25).
     */
    private static final List<Double> FAILED = List.of(2.44 / Gravity.STANDARD, 2.55 / Gravity.STANDARD, 0.5);

    /** Asked of hot brakes, g: UN R13-H Annex 3 after Type-I, FMVSS 135 S7.14 (from memory). */
    private static final List<Double> HOT = List.of(4.82 / Gravity.STANDARD, 4.88 / Gravity.STANDARD);

    private Failures() {}

    /** A circuit or the booster failed, at {@link #PUSH}. */
    public static List<Failure> of(ResolvedBuild build, Chain chain) {
        return failed(build, chain).stream().map(car -> car.at(PUSH)).toList();
    }

    /** The same with the efforts that rules ask about. */
    public static List<Failure> explained(ResolvedBuild build, Chain chain) {
        return explained(build, failed(build, chain));
    }

    /** Nothing failed but something weak, at {@link #PUSH}: air in either circuit, all brakes hot. */
    public static List<Failure> weakened(ResolvedBuild build, Chain chain) {
        return explained(
                build,
                List.of(
                        new Air(build, chain, AxleEnd.FRONT),
                        new Air(build, chain, AxleEnd.REAR),
                        new Fade(build, chain)));
    }

    private static List<WeakCar> failed(ResolvedBuild build, Chain chain) {
        List<WeakCar> cars = new ArrayList<>();
        cars.add(new CircuitFailure(build, chain, AxleEnd.FRONT));
        cars.add(new CircuitFailure(build, chain, AxleEnd.REAR));
        if (build.apply() instanceof ResolvedApply.Tandem tandem
                && tandem.booster().isPresent()) {
            cars.add(new BoosterFailure(build, chain, chain.unassisted()));
        }
        return cars;
    }

    private static List<Failure> explained(ResolvedBuild build, List<WeakCar> cars) {
        List<Failure> failures = new ArrayList<>();
        for (WeakCar car : cars) {
            Failure failure = car.at(PUSH);
            failures.add(failure.withEffortFor(Efforts.of(build, car, demands(build, failure.what()))));
        }
        return List.copyOf(failures);
    }

    private static List<Double> demands(ResolvedBuild build, What what) {
        if (what != What.FADE) {
            return FAILED;
        }
        List<Double> hot = new ArrayList<>(HOT);
        hot.add(build.aims().hardStopG());
        return hot;
    }
}
