package org.brakewright.analysis.stop;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.brakewright.analysis.Analyse;
import org.brakewright.analysis.Analysis;
import org.brakewright.analysis.Cars;
import org.brakewright.analysis.Rig;
import org.brakewright.analysis.WrittenCar;
import org.brakewright.analysis.balance.Lock;
import org.brakewright.kernel.ode.Precision;
import org.junit.jupiter.api.Test;

class StopsTest {
    private static final double G = 9.80665;

    /** From 90 km/h, as in Khurmi and Gupta, Theory of Machines, example 2.1. */
    static final WrittenCar CAR = Cars.TWIN.with("""
            stops.speed: 90 km/h
            stops.rise: 0.02 s
            stops.slippery_grip: 0.3
            stops.peak_slip: 0.1
            stops.sliding_share: 0.8
            stops.front_wheel_inertia: 0.06 kg m2
            stops.rear_wheel_inertia: 0.06 kg m2
            """);

    private static List<Stop> stops(WrittenCar car, double force, Precision precision) {
        Rig rig = Rig.of(car);
        return Stops.of(rig.build(), rig.chain(), rig.curve(), force, precision);
    }

    private static Stop hard(WrittenCar car, double force) {
        return kind(StopKind.HARD, stops(car, force, Stops.PRECISION));
    }

    private static Stop kind(StopKind kind, List<Stop> stops) {
        return stops.stream().filter(stop -> stop.kind() == kind).findFirst().orElseThrow();
    }

    /** Pedal force (N) that slows the car at a deceleration in m/s2. */
    private static double push(double deceleration) {
        return Rig.of(CAR).curve().pedalForce(1000 * deceleration).orElseThrow();
    }

    /**
     * Row A10: from 90 km/h to rest in 5 s takes 62.5 m, at 5 m/s2. The rise of 0.02 s costs half of it, and light wheels of
     * 0.06 kg m2 that turn with the car add 4 x 0.06 / 0.3^2 = 2.7 kg to the 1,000.
     */
    @Test
    void stopsAsTheClosedFormSays() {
        Stop stop = hard(CAR, push(5));
        assertThat(stop.ending()).isEqualTo(Stop.Ending.AT_REST);
        assertThat(stop.distanceM()).isCloseTo(62.5 * 1.0027 + 25 * 0.01, withinPercentage(0.5));
        assertThat(stop.timeS()).isCloseTo(5 * 1.0027 + 0.01, withinPercentage(0.5));
        assertThat(requireNonNull(stop.mfddMS2())).isCloseTo(5 / 1.0027, withinPercentage(0.5));
        assertThat(stop.first()).isNull();
        assertThat(stop.comparison()).isEqualTo(Stop.Comparison.SAME);
    }

    /** Balance: motion lost is found again as heat and work, to 1e-6, wheels locked or not. */
    @Test
    void losesNoEnergy() {
        assertThat(stops(CAR, push(5), Stops.PRECISION))
                .hasSize(5)
                .allSatisfy(stop -> assertThat(stop.energyErrorShare()).isLessThan(1e-6));
    }

    /** The distance depends on no step: tolerances a half as large move it by less than a millimetre. */
    @Test
    void doesNotDependOnTheSteps() {
        List<Stop> coarse = stops(CAR, push(5), Stops.PRECISION);
        List<Stop> fine = stops(CAR, push(5), new Precision(5e-8, 5e-9));
        for (int i = 0; i < coarse.size(); i++) {
            assertThat(fine.get(i).distanceM()).isCloseTo(coarse.get(i).distanceM(), within(1e-3));
        }
    }

    /** No tyre gives more than its grip, so no stop is shorter than v^2 / (2 g mu) (Bevan, The Theory of Machines, ch. 8: all wheels braked). */
    @Test
    void neverBeatsTheGripOfTheRoad() {
        assertThat(stops(CAR, push(5), Stops.PRECISION))
                .allSatisfy(stop -> assertThat(stop.distanceM()).isGreaterThan(25 * 25 / (2 * G * stop.grip())));
    }

    /** Front share 2/3 locks the front first below (0.5 - 1/3)/0.2 = 0.83 g (closed form), so on a slippery road. */
    @Test
    void locksTheFrontFirstOnASlipperyRoad() {
        Stop slippery = kind(StopKind.PANIC_SLIPPERY, stops(CAR, push(5), Stops.PRECISION));
        assertThat(slippery.first()).isIn(Lock.Axle.FRONT, Lock.Axle.BOTH);
        assertThat(requireNonNull(slippery.frontPastPeakS())).isLessThan(requireNonNull(slippery.rearPastPeakS()));
        assertThat(slippery.quasiStatic()).isEqualTo(Lock.Axle.FRONT);
    }

    @Test
    void followsStopsOnlyWhereTheyAreAskedFor() {
        Analysis analysis = Analyse.analyse(CAR.resolved());
        assertThat(analysis.stops()).isEmpty();
        List<Stop> followed = Stops.of(CAR.resolved(), analysis.hardStop());
        assertThat(followed).hasSize(5);
        assertThat(analysis.with(followed).stops()).isEqualTo(followed);
        assertThat(analysis.with(followed).with(List.of())).isEqualTo(analysis);
        assertThat(Stops.of(Cars.TWIN.resolved(), analysis.hardStop())).isEmpty();
    }
}
