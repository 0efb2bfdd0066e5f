package org.brakewright.analysis.heat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakewright.kernel.ode.Integration;
import org.brakewright.kernel.ode.Integrator;
import org.brakewright.kernel.ode.Precision;
import org.brakewright.kernel.ode.Span;
import org.brakewright.kernel.ode.Watcher;
import org.brakewright.kernel.thermal.WheelHeat;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.resolved.ResolvedHeat;
import org.brakewright.model.resolved.ResolvedSchedule;
import org.brakewright.model.resolved.ResolvedSchedule.Leg;
import org.jspecify.annotations.Nullable;

/** Drives a car through one schedule, leaves it standing for half an hour, and drives it on to cool. */
final class ScheduleRun {
    /** Time of standing after a schedule, s: heat soaks into the fluid. */
    static final double STANDING = 1800;

    /** Rotors are cool again at 100 °C, the upper end of a cold brake in UN R13-H and FMVSS 135 (from memory), K. */
    static final double COOL = 373.15;

    private static final double LONGEST_COOLING = 7200;
    private static final int COOLING_LOOKS = 360;
    private static final int BRAKING_LOOKS = 8;
    private static final int STANDING_LOOKS = 30;
    private static final int MOST_LEGS_DRAWN = 60;

    private final ResolvedBuild build;
    private final ResolvedHeat heat;
    private final HeatedCar car;
    private final ResolvedSchedule schedule;
    private final Precision precision;
    private final AxlePeaks front;
    private final AxlePeaks rear;
    private final List<HeatSample> samples = new ArrayList<>();
    private final double[] state;
    private double time;
    private double brakingSince = Double.NaN;
    private boolean withCooling = true;
    private @Nullable HotMoment hottest;

    /**
     * Where least is left.
     *
     * @param time s
     * @param frontRotor K
     * @param rearRotor K
     * @param frontLeft front brake force at the same pressure over that of the working brake
     * @param rearLeft the same at the rear
     * @param left force of the car's brakes at the hard stop's pressures, N, no more than working
     */
    record HotMoment(double time, double frontRotor, double rearRotor, double frontLeft, double rearLeft, double left) {

        /** Whether less is left than at another moment, or as much but hotter; friction that rises with heat saves nothing. */
        boolean worseThan(@Nullable HotMoment other) {
            return other == null || left < other.left || (left == other.left && frontRotor > other.frontRotor);
        }
    }

    ScheduleRun(ResolvedBuild build, ResolvedHeat heat, HeatedCar car, ResolvedSchedule schedule, Precision precision) {
        this.build = build;
        this.heat = heat;
        this.car = car;
        this.schedule = schedule;
        this.precision = precision;
        this.front = new AxlePeaks(heat.front(), car.front(), 0);
        this.rear = new AxlePeaks(heat.rear(), car.rear(), HeatedCar.REAR);
        this.state = car.cold();
    }

    /** Leaves out the driving on to cool. */
    void stayHot() {
        withCooling = false;
    }

    /**
     * What the schedule does; empty when the temperatures could not be followed.
     *
     * @param frontForce of the hard stop, N: where least is left of both is the hottest moment
     * @param rearForce of the hard stop, N
     */
    Optional<ScheduleHeat> run(double frontForce, double rearForce) {
        double stored = car.stored(state);
        sample(schedule.legs().getFirst().fromSpeed());
        int drawn = Math.max(1, schedule.legs().size() / MOST_LEGS_DRAWN);
        for (int i = 0; i < schedule.legs().size(); i++) {
            Leg leg = schedule.legs().get(i);
            if (!drive(leg, (at, now) -> weigh(at, now, frontForce, rearForce))) {
                return Optional.empty();
            }
            if (i % drawn == 0 || i == schedule.legs().size() - 1) {
                sample(leg.toSpeed());
            }
        }
        double[] end = state.clone();
        double duration = time;
        if (!stand()) {
            return Optional.empty();
        }
        double brought = HeatedCar.ACCOUNT * state[HeatedCar.BROUGHT];
        double left = car.stored(state) - stored + HeatedCar.ACCOUNT * state[HeatedCar.GIVEN] - brought;
        return Optional.of(new ScheduleHeat(
                schedule.name(),
                duration,
                brought,
                brought > 0 ? Math.abs(left) / brought : 0,
                front.result(end, car.around(heat.onwardSpeed(), build.car().frontTyreRadius())),
                rear.result(end, car.around(heat.onwardSpeed(), build.car().rearTyreRadius())),
                withCooling ? coolingTime(end) : null,
                List.copyOf(samples)));
    }

    /** Where least was left; null when the brakes were never on. */
    @Nullable
    HotMoment hottest() {
        return hottest;
    }

    private void weigh(double at, double[] now, double frontForce, double rearForce) {
        double frontLeft = car.frontLeft(now);
        double rearLeft = car.rearLeft(now);
        double left = Math.min(1, frontLeft) * frontForce + Math.min(1, rearLeft) * rearForce;
        double rearRotor = now[HeatedCar.REAR + WheelHeat.ROTOR];
        HotMoment moment = new HotMoment(at, now[WheelHeat.ROTOR], rearRotor, frontLeft, rearLeft, left);
        if (moment.worseThan(hottest)) {
            hottest = moment;
        }
    }

    private boolean drive(Leg leg, Watcher whileBraking) {
        double start = time;
        double force = car.force(leg, 0, schedule.inGear());
        boolean braking = force > 0;
        if (!braking) {
            brakingSince = Double.NaN;
        } else if (Double.isNaN(brakingSince)) {
            brakingSince = start;
            applied(force, leg.fromSpeed());
        }
        Watcher watcher = (at, now) -> {
            see(start + at, now);
            if (braking) {
                brakes(leg, at, start, now);
                whileBraking.see(start + at, now);
            }
        };
        boolean followed = follow(leg, braking ? BRAKING_LOOKS : 1, state, watcher);
        time = start + leg.duration();
        return followed;
    }

    private void applied(double force, double speed) {
        double share = car.frontShare(force, state);
        front.applied(share * force * speed, state);
        rear.applied((1 - share) * force * speed, state);
    }

    private void brakes(Leg leg, double at, double start, double[] now) {
        double force = car.force(leg, at, schedule.inGear());
        double share = force > 0 ? car.frontShare(force, now) : 0.5;
        double power = force * leg.speed(at);
        double since = start + at - brakingSince;
        front.braking(share * power, since, now);
        rear.braking((1 - share) * power, since, now);
    }

    private boolean follow(Leg leg, int looks, double[] at, Watcher watcher) {
        Integration ended = Integrator.follow(
                (t, now, rates) -> car.rates(car.force(leg, t, schedule.inGear()), leg.speed(t), now, rates),
                new Span(0, leg.duration(), looks),
                at,
                precision,
                watcher);
        return switch (ended) {
            case Integration.Reached _ -> true;
            case Integration.Ended _, Integration.Stuck _ -> false;
        };
    }

    private boolean stand() {
        double start = time;
        return follow(new Leg(STANDING, 0, 0, 0), STANDING_LOOKS, state, (at, now) -> {
            see(start + at, now);
            add(start + at, 0, now);
        });
    }

    private @Nullable Double coolingTime(double[] end) {
        Cooling cooling = new Cooling(hotter(end));
        if (cooling.cool()) {
            return 0.0;
        }
        Leg onward = new Leg(LONGEST_COOLING, heat.onwardSpeed(), heat.onwardSpeed(), 0);
        follow(onward, COOLING_LOOKS, end.clone(), (at, now) -> cooling.see(at, hotter(now)));
        return cooling.time;
    }

    private static double hotter(double[] now) {
        return Math.max(now[WheelHeat.ROTOR], now[HeatedCar.REAR + WheelHeat.ROTOR]);
    }

    /** Finds when the hotter rotor is cool, in a straight line between two looks. */
    private static final class Cooling {
        private double before;
        private double timeBefore;
        private @Nullable Double time;

        Cooling(double start) {
            before = start;
        }

        boolean cool() {
            return before <= COOL;
        }

        void see(double at, double temperature) {
            if (time == null && temperature <= COOL) {
                time = timeBefore + (at - timeBefore) * (before - COOL) / (before - temperature);
            }
            before = temperature;
            timeBefore = at;
        }
    }

    private void see(double at, double[] now) {
        front.see(at, now);
        rear.see(at, now);
    }

    private void sample(double speed) {
        see(time, state);
        add(time, speed, state);
    }

    private void add(double at, double speed, double[] now) {
        int rearAt = HeatedCar.REAR;
        samples.add(new HeatSample(
                at,
                speed,
                now[WheelHeat.ROTOR],
                now[WheelHeat.LININGS],
                now[WheelHeat.FLUID],
                now[rearAt + WheelHeat.ROTOR],
                now[rearAt + WheelHeat.LININGS],
                now[rearAt + WheelHeat.FLUID]));
    }
}
