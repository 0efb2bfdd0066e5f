package org.brakewright.analysis.stop;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.brakewright.analysis.Rig;
import org.brakewright.analysis.WrittenCar;
import org.brakewright.analysis.chain.ChainCurve;
import org.brakewright.kernel.dynamics.Mfdd;
import org.brakewright.kernel.ode.Precision;
import org.brakewright.model.vehicle.AxleEnd;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whole stops against textbooks and closed forms. */
class PublishedStopsTest {
    private static final double FOOT = 0.3048;
    private static final double POUND = 4.4482216152605;
    private static final double RISE = 0.02;

    /** Mass in kg that four light wheels of 0.06 kg m2 and 300 mm seem to add. */
    private static final double TURNING = 4 * 0.06 / (0.3 * 0.3);

    private static Stop follow(WrittenCar car, ChainCurve curve, StopKind kind, double force) {
        return Stops.one(car.resolved(), curve, kind, force);
    }

    /**
     * Row A1: T. D. Gillespie, Fundamentals of Vehicle Dynamics, ch. 3, example 1 (from memory): 3635 lb from 60 mph under
     * 2000 lb stop in 218.6 ft and 4.966 s. The wheels turn with the car; half the rise of 0.02 s comes on top.
     */
    @Test
    void stopsTheLightTruck() {
        double mass = 3635 * POUND / (32.2 * FOOT);
        WrittenCar car = StopsTest.CAR
                .with("car.load_cases[0].front_axle", mass / 2)
                .with("car.load_cases[0].rear_axle", mass / 2)
                .with("stops.speed", 88 * FOOT);
        ChainCurve curve = Rig.of(car).curve();
        Stop stop =
                follow(car, curve, StopKind.HARD, curve.pedalForce(2000 * POUND).orElseThrow());
        double heavier = 1 + TURNING / mass;
        assertThat(stop.distanceM() / FOOT).isCloseTo(218.6 * heavier + 88 * RISE / 2, withinPercentage(0.1));
        assertThat(stop.timeS()).isCloseTo(4.966 * heavier + RISE / 2, withinPercentage(0.1));
    }

    /**
     * Row A3: T. Bevan, The Theory of Machines, ch. 8, example 6: shortest stops from 30 mph, wheelbase 9.5 ft, centre of gravity
     * 2 ft high and 4 ft before the rear axle, at g = 32.2. All braked wheels slide here, at 0.98 of their grip, which gives the
     * book's coefficients; until they do the car rolls on for the time it takes them to lock.
     */
    @ParameterizedTest
    @CsvSource({
        "0.1, rear, 530",
        "0.1, front, 699",
        "0.1, all, 300.6",
        "0.6, rear, 97.5",
        "0.6, front, 104",
        "0.6, all, 50.1"
    })
    void stopsAsShortAsBevanSays(double sliding, String braked, double feet) {
        WrittenCar car = StopsTest.CAR
                .with("car.wheelbase", 9.5 * FOOT)
                .with("car.load_cases[0].cg_height", 2 * FOOT)
                .with("car.load_cases[0].front_axle", 1000 * 4 / 9.5)
                .with("car.load_cases[0].rear_axle", 1000 * 5.5 / 9.5)
                .with("car.grip", sliding / 0.98)
                .with("stops.sliding_share", 0.98)
                .with("stops.speed", 44 * FOOT);
        Rig rig = Rig.of(car);
        ChainCurve curve = switch (braked) {
            case "rear" -> ChainCurve.of(rig.chain().failed(AxleEnd.FRONT));
            case "front" -> ChainCurve.of(rig.chain().failed(AxleEnd.REAR));
            default -> rig.curve();
        };
        Stop stop = follow(car, curve, StopKind.PANIC, 1300);
        double published = feet * FOOT * 32.2 / (9.80665 / FOOT);
        double untilLocked = 44 * FOOT * Math.max(orZero(stop.frontLockS()), orZero(stop.rearLockS()));
        assertThat(untilLocked).isPositive();
        assertThat(stop.distanceM()).isBetween(0.998 * published, 1.003 * published + untilLocked);
    }

    private static double orZero(@Nullable Double time) {
        return time == null ? 0 : time;
    }

    /**
     * Mean fully developed deceleration by the formula of Directive 71/320/EEC, (vb^2 - ve^2) / (25.92 (se - sb)) in km/h and m, on the
     * samples of a stop at a steady force, where it is the force over the mass.
     */
    @Test
    void tellsTheDevelopedDecelerationOfTheRegulation() {
        ChainCurve curve = Rig.of(StopsTest.CAR).curve();
        Stop stop = follow(
                StopsTest.CAR, curve, StopKind.HARD, curve.pedalForce(1000 * 5).orElseThrow());
        double[] speeds =
                stop.samples().stream().mapToDouble(StopSample::speedMS).toArray();
        double[] distances =
                stop.samples().stream().mapToDouble(StopSample::distanceM).toArray();
        double told = requireNonNull(stop.mfddMS2());
        assertThat(Mfdd.ofTrace(speeds, distances).orElseThrow()).isCloseTo(told, withinPercentage(0.01));
        assertThat(told).isCloseTo(5000 / (1000 + TURNING), withinPercentage(0.02));
    }

    /** Grid-free: a half and a hundredth of the error allowed move distance, locks and energy by less than stated. */
    @Test
    void doesNotDependOnTheSteps() {
        Rig rig = Rig.of(StopsTest.CAR);
        for (double force : new double[] {150, 400, 900}) {
            Stop coarse = at(rig, force, Stops.PRECISION);
            for (double finer : new double[] {0.5, 0.01}) {
                Stop fine = at(
                        rig,
                        force,
                        new Precision(Stops.PRECISION.absolute() * finer, Stops.PRECISION.relative() * finer));
                assertThat(fine.distanceM()).isCloseTo(coarse.distanceM(), within(1e-3));
                assertThat(fine.timeS()).isCloseTo(coarse.timeS(), within(1e-3));
                assertThat(fine.frontLockS() == null).isEqualTo(coarse.frontLockS() == null);
                assertThat(orZero(fine.frontLockS())).isCloseTo(orZero(coarse.frontLockS()), within(1e-5));
                assertThat(orZero(fine.rearLockS())).isCloseTo(orZero(coarse.rearLockS()), within(1e-5));
            }
        }
    }

    private static Stop at(Rig rig, double force, Precision precision) {
        Stops stops = new Stops(rig.build(), rig.build().stops().orElseThrow(), rig.curve(), precision);
        return stops.stop(
                StopKind.HARD,
                rig.build().car().heaviest(),
                rig.build().car().grip(),
                new PedalRamp(rig.curve(), force, RISE));
    }
}
