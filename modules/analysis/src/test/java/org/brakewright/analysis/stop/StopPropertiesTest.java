package org.brakewright.analysis.stop;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import org.brakewright.analysis.RandomCars;
import org.brakewright.analysis.Rig;
import org.brakewright.analysis.chain.ChainCurve;
import org.brakewright.model.resolved.ResolvedCar;
import org.brakewright.model.resolved.ResolvedStops;
import org.brakewright.model.vehicle.AxleEnd;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What must hold for the stops of every car, whatever its numbers. */
class StopPropertiesTest {
    private static final int BUILDS = 40;
    private static final double G = 9.80665;

    /** A slippery road of 0.3; a locked wheel holds nearly as much as a rolling one. */
    private static final ResolvedStops ASKED = new ResolvedStops(25, 0.2, 0.3, 0.1, 0.95, 0.9, 1.1, Optional.empty());

    private static List<Stop> stops(Rig rig) {
        return new Stops(rig.build(), ASKED, rig.curve(), Stops.PRECISION).all(rig.chain(), 300.0);
    }

    private static void eachStop(Consumer<Stop> check) {
        RandomCars.each(BUILDS, rig -> stops(rig).forEach(check));
    }

    /** Conservation of energy, to 1e-6, wheels rolling, slipping, locked and let go again. */
    @Test
    void losesNoEnergy() {
        eachStop(stop -> assertThat(stop.energyErrorShare()).isLessThan(1e-6));
    }

    /** A stop always says how it ended, and its numbers are of that. */
    @Test
    void endsAtRestOrSaysThatItDoesNot() {
        eachStop(stop -> {
            assertThat(stop.ending()).isNotEqualTo(Stop.Ending.NOT_SOLVED);
            assertThat(stop.distanceM()).isFinite().isPositive();
            if (rests(stop)) {
                assertThat(stop.samples().getLast().speedMS()).isLessThanOrEqualTo(StopRun.STANDSTILL + 1e-6);
                assertThat(stop.timeS()).isLessThan(StopRun.LONGEST + 60);
            }
        });
    }

    /** No tyre gives more than its grip: v^2 / (2 mu g) (Bevan, The Theory of Machines, ch. 8: all wheels braked). */
    @Test
    void neverBeatsTheGripOfTheRoad() {
        AtomicInteger held = new AtomicInteger();
        RandomCars.each(BUILDS, rig -> {
            ResolvedCar car = rig.build().car();
            if (car.aero().isEmpty() && car.loadSensitivity().orElse(0) == 0) {
                stops(rig).stream().filter(StopPropertiesTest::rests).forEach(stop -> {
                    assertThat(stop.distanceM()).isGreaterThan(25 * 25 / (2 * stop.grip() * G));
                    held.incrementAndGet();
                });
            }
        });
        assertThat(held.get()).isGreaterThan(50);
    }

    /** Closed form: where every wheel holds more at the same slip, the way is no longer. */
    @Test
    void isNeverLongerOnMoreGrip() {
        RandomCars.each(
                BUILDS,
                rig -> byLoadCase(stops(rig), kinds -> {
                    Stop dry = requireNonNull(kinds.get(StopKind.PANIC));
                    Stop slippery = requireNonNull(kinds.get(StopKind.PANIC_SLIPPERY));
                    if (dry.grip() > slippery.grip() && rests(slippery)) {
                        assertThat(dry.distanceM()).isLessThan(slippery.distanceM());
                    }
                }));
    }

    /** One axle alone, at the same push, stops no sooner than both: it has the grip of a part of the load only. */
    @Test
    void isNeverShorterWithACircuitOpen() {
        RandomCars.each(BUILDS, rig -> {
            Stop whole = one(rig.curve(), rig);
            for (AxleEnd end : AxleEnd.values()) {
                ChainCurve open = ChainCurve.of(rig.chain().failed(end));
                Stop stop = one(open, rig);
                assertThat(rests(whole) || !rests(stop)).isTrue();
                if (rests(stop)
                        && open.at(400).totalForce() < rig.curve().at(400).totalForce()) {
                    assertThat(stop.distanceM()).isGreaterThan(0.999 * whole.distanceM());
                }
            }
        });
    }

    private static boolean rests(Stop stop) {
        return stop.ending() == Stop.Ending.AT_REST;
    }

    private static Stop one(ChainCurve curve, Rig rig) {
        Stops stops = new Stops(rig.build(), ASKED, rig.curve(), Stops.PRECISION);
        return stops.stop(
                StopKind.PANIC,
                rig.build().car().heaviest(),
                rig.build().car().grip(),
                new PedalRamp(curve, 400, ASKED.rise()));
    }

    /** A wheel passes the slip of its greatest force before it locks, and what locked first is an axle that locked. */
    @Test
    void locksInAnOrderThatGoesTogether() {
        AtomicInteger locked = new AtomicInteger();
        eachStop(stop -> {
            passesThenLocks(stop.frontPastPeakS(), stop.frontLockS());
            passesThenLocks(stop.rearPastPeakS(), stop.rearLockS());
            boolean any = stop.frontLockS() != null || stop.rearLockS() != null;
            assertThat(stop.first() != null).isEqualTo(any);
            locked.addAndGet(any ? 1 : 0);
        });
        assertThat(locked.get()).isGreaterThan(50);
    }

    private static void passesThenLocks(@Nullable Double passed, @Nullable Double locked) {
        if (locked != null) {
            assertThat(passed).isNotNull().isLessThanOrEqualTo(locked);
        }
    }

    /** Far below the push that locks a wheel none locks (closed form: each axle uses less than its grip). */
    @Test
    void locksNoWheelOfAGentlePush() {
        AtomicInteger gentle = new AtomicInteger();
        eachStop(stop -> {
            Double needed = stop.quasiStaticLockN();
            if (needed != null && stop.pedalForceN() < 0.9 * needed) {
                assertThat(stop.first()).isNull();
                gentle.incrementAndGet();
            }
        });
        assertThat(gentle.get()).isGreaterThan(5);
    }

    private static void byLoadCase(List<Stop> stops, Consumer<Map<StopKind, Stop>> check) {
        stops.stream().map(Stop::loadCase).distinct().forEach(name -> {
            Map<StopKind, Stop> kinds = new EnumMap<>(StopKind.class);
            stops.stream().filter(stop -> stop.loadCase().equals(name)).forEach(stop -> kinds.put(stop.kind(), stop));
            check.accept(kinds);
        });
    }
}
