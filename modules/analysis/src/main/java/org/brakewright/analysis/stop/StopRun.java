package org.brakewright.analysis.stop;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.brakewright.analysis.stop.Stop.Ending;
import org.brakewright.analysis.stop.StopMotion.Locked;
import org.brakewright.kernel.dynamics.Gravity;
import org.brakewright.kernel.dynamics.Mfdd;
import org.brakewright.kernel.dynamics.SlippingCar.Moment;
import org.brakewright.kernel.ode.Integration;
import org.brakewright.kernel.ode.Integrator;
import org.brakewright.kernel.ode.Precision;
import org.brakewright.kernel.ode.Span;
import org.brakewright.kernel.ode.Threshold;
import org.brakewright.kernel.ode.Watcher;

/**
 * Follows one stop from the first movement of the pedal to rest.
 *
 * <p>Maintainer's note. Wheels that stop turning are held at rest until the road would turn them again; each such change, and
 * each bend of the push, begins a new span, within which all rates are smooth. Slip loses its meaning near rest, so the
 * last {@link #STANDSTILL} is taken at the deceleration reached.
 */
final class StopRun {
    /** Speed below which the car counts as stopped, m/s. */
    static final double STANDSTILL = 0.5;

    /** Longest time followed, s. */
    static final double LONGEST = 60;

    private static final double LOOK = 0.05;

    /** Samples kept lie this far apart, s, but for those at locks and at the end. */
    private static final double APART = 0.1 * (1 - 1e-9);

    private static final double SHARE_AT_STANDSTILL = 0.05;
    private static final double DEVELOPED = 0.8;
    private static final double NEARLY_STOPPED = 0.1;

    private final StopMotion motion;
    private final StopBrakes brakes;
    private final Precision precision;
    private final double[] state;
    private final double startSpeed;
    private final double standstill;
    private final double startEnergy;
    private final List<StopLook> looks = new ArrayList<>();
    private final double peakSlip;
    private final double[] pastPeak = {Double.NaN, Double.NaN};
    private final double[] lockTime = {Double.NaN, Double.NaN};
    private final double[] developed = {Double.NaN, Double.NaN};
    private Locked locked = Locked.NONE;
    private double time;
    private boolean stopped;
    private double peakDeceleration;
    private double lastKept = Double.NEGATIVE_INFINITY;

    /** Thresholds in the order in which they are handed to the integrator. */
    private enum Event {
        STOPPED,
        FRONT,
        REAR,
        DEVELOPED,
        NEARLY_STOPPED,
        FRONT_PAST_PEAK,
        REAR_PAST_PEAK
    }

    /**
     * A stop to be driven.
     *
     * @param state at its start
     * @param peakSlip slip at which the tyres hold most
     */
    StopRun(StopMotion motion, StopBrakes brakes, double[] state, double peakSlip, Precision precision) {
        this.motion = motion;
        this.brakes = brakes;
        this.state = state;
        this.peakSlip = peakSlip;
        this.precision = precision;
        this.startSpeed = motion.speed(state);
        this.standstill = Math.min(STANDSTILL, SHARE_AT_STANDSTILL * startSpeed);
        this.startEnergy = motion.energy(state);
    }

    /** Drives the stop to its end. */
    Ending run() {
        see(0, state);
        double[] ends = DoubleStream.concat(DoubleStream.of(brakes.bends()), DoubleStream.of(LONGEST))
                .toArray();
        for (double end : ends) {
            while (time < end) {
                switch (follow(end)) {
                    case Integration.Reached reached -> time = end;
                    case Integration.Ended ended -> {
                        time = ended.time();
                        if (pass(Event.values()[ended.threshold()])) {
                            return Ending.AT_REST;
                        }
                    }
                    case Integration.Stuck stuck -> {
                        return Ending.NOT_SOLVED;
                    }
                }
            }
        }
        return Ending.STILL_MOVING;
    }

    private Integration follow(double end) {
        int looks = Math.max(1, (int) Math.ceil((end - time) / LOOK));
        return Integrator.follow(
                (at, now, rates) -> motion.rates(brakes.torques(at), locked, now, rates),
                new Span(time, end, looks),
                state,
                precision,
                new Watcher() {
                    @Override
                    public void see(double at, double[] now) {
                        StopRun.this.see(at, now);
                    }

                    @Override
                    public List<Threshold> ends() {
                        return thresholds();
                    }
                });
    }

    /** One for each {@link Event}. */
    private List<Threshold> thresholds() {
        return List.of(
                (at, now) -> motion.speed(now) - standstill,
                locked.front() ? this::holdsFront : (at, now) -> motion.frontTurning(now),
                locked.rear() ? this::holdsRear : (at, now) -> motion.rearTurning(now),
                (at, now) -> motion.speed(now) - DEVELOPED * startSpeed,
                (at, now) -> motion.speed(now) - NEARLY_STOPPED * startSpeed,
                (at, now) -> peakSlip - motion.frontSlip(now),
                (at, now) -> peakSlip - motion.rearSlip(now));
    }

    /** Torque by which a standing front brake is stronger than the road, N m. */
    private double holdsFront(double at, double[] now) {
        return brakes.torques(at).front()
                - motion.moment(now).frontForce() * motion.car().front().rollingRadius();
    }

    private double holdsRear(double at, double[] now) {
        return brakes.torques(at).rear()
                - motion.moment(now).rearForce() * motion.car().rear().rollingRadius();
    }

    /** Goes on behind a threshold; true at the end of the stop. */
    private boolean pass(Event event) {
        switch (event) {
            case STOPPED -> {
                keep(time, state);
                stopped = true;
                return true;
            }
            case FRONT -> {
                locked = new Locked(!locked.front(), locked.rear());
                motion.lockFront(state);
                keep(time, state);
                note(lockTime, 0, time);
            }
            case REAR -> {
                locked = new Locked(locked.front(), !locked.rear());
                motion.lockRear(state);
                keep(time, state);
                note(lockTime, 1, time);
            }
            case DEVELOPED -> note(developed, 0, motion.distance(state));
            case NEARLY_STOPPED -> note(developed, 1, motion.distance(state));
            case FRONT_PAST_PEAK -> note(pastPeak, 0, time);
            case REAR_PAST_PEAK -> note(pastPeak, 1, time);
        }
        return false;
    }

    private static void note(double[] first, int which, double value) {
        if (Double.isNaN(first[which])) {
            first[which] = value;
        }
    }

    private void see(double at, double[] now) {
        look(at, now, at >= lastKept + APART);
    }

    private void keep(double at, double[] now) {
        look(at, now, true);
    }

    private void look(double at, double[] now, boolean kept) {
        double deceleration = motion.moment(now).deceleration();
        peakDeceleration = Math.max(peakDeceleration, deceleration);
        StopSample moment = new StopSample(
                at,
                motion.distance(now),
                motion.speed(now),
                deceleration / Gravity.STANDARD,
                motion.frontSlip(now),
                motion.rearSlip(now),
                null,
                null);
        looks.add(new StopLook(moment, motion.frontWork(now), motion.rearWork(now), kept));
        lastKept = kept ? at : lastKept;
    }

    /** From the first movement of the pedal to rest, or as far as followed when it did not come to rest, m. */
    double distance() {
        double speed = motion.speed(state);
        return motion.distance(state) + (stopped ? speed * speed / (2 * deceleration()) : 0);
    }

    /** The same, s. */
    double time() {
        return time + (stopped ? motion.speed(state) / deceleration() : 0);
    }

    /** Mean fully developed deceleration, m/s2. */
    OptionalDouble meanDeveloped() {
        return Double.isNaN(developed[1])
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        Mfdd.fromSi(DEVELOPED * startSpeed, NEARLY_STOPPED * startSpeed, developed[0], developed[1]));
    }

    /** When the front tyres first pass their peak, s. */
    OptionalDouble frontPastPeak() {
        return known(pastPeak[0]);
    }

    /** When the rear tyres first pass their peak, s. */
    OptionalDouble rearPastPeak() {
        return known(pastPeak[1]);
    }

    /** When the front wheels first stop turning, s. */
    OptionalDouble frontLock() {
        return known(lockTime[0]);
    }

    /** When the rear wheels first stop turning, s. */
    OptionalDouble rearLock() {
        return known(lockTime[1]);
    }

    /** Energy of motion lost and not found again, over that at the start. */
    double energyError() {
        return Math.abs(startEnergy - motion.energy(state) - motion.spent(state)) / startEnergy;
    }

    /** Greatest of the moments seen, g. */
    double peakDecelerationG() {
        return peakDeceleration / Gravity.STANDARD;
    }

    /** Everything seen on the way. */
    List<StopLook> looks() {
        return List.copyOf(looks);
    }

    private double deceleration() {
        Moment last = motion.moment(state);
        return last.deceleration();
    }

    private static OptionalDouble known(double value) {
        return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
