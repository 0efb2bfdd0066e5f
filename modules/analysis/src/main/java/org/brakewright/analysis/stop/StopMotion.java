package org.brakewright.analysis.stop;

import java.util.Optional;
import org.brakewright.kernel.dynamics.PitchingBody;
import org.brakewright.kernel.dynamics.SlippingAxle;
import org.brakewright.kernel.dynamics.SlippingCar;
import org.brakewright.kernel.dynamics.SlippingCar.Moment;

/**
 * The motion of a stopping car as places of a state, and its rates.
 *
 * @param car on wheels that may slip
 * @param body on its springs; empty when the load moves at once
 */
record StopMotion(SlippingCar car, Optional<PitchingBody> body) {
    /** Places that the motion takes. */
    static final int PLACES = 9;

    /** What the accounts of energy are kept in, J, so that they are of the size of the other places. */
    static final double ACCOUNT = 1e4;

    /** Slowest speed that slip is reckoned at, m/s: steps tried beyond the end of a stop see this one. */
    private static final double SLOWEST = 0.05;

    private static final int DISTANCE = 0;
    private static final int SPEED = 1;
    private static final int FRONT = 2;
    private static final int REAR = 3;
    private static final int MOVED = 4;
    private static final int MOVED_RATE = 5;
    private static final int SPENT = 6;
    private static final int FRONT_WORK = 7;
    private static final int REAR_WORK = 8;

    /**
     * What the brakes do at one moment, wheels turning.
     *
     * @param front torque of both front brakes, N m
     * @param rear torque of both rear brakes, N m
     */
    record Torques(double front, double rear) {}

    /**
     * Which wheels stand still.
     *
     * @param front both front wheels
     * @param rear both rear wheels
     */
    record Locked(boolean front, boolean rear) {
        static final Locked NONE = new Locked(false, false);
    }

    /** Rolls freely at a speed in m/s. */
    void start(double speed, double[] state) {
        state[SPEED] = speed;
        state[FRONT] = speed / car.front().rollingRadius();
        state[REAR] = speed / car.rear().rollingRadius();
    }

    double distance(double[] state) {
        return state[DISTANCE];
    }

    double speed(double[] state) {
        return state[SPEED];
    }

    double frontTurning(double[] state) {
        return state[FRONT];
    }

    double rearTurning(double[] state) {
        return state[REAR];
    }

    double frontSlip(double[] state) {
        return car.front().slip(moving(state), frontTurning(state));
    }

    double rearSlip(double[] state) {
        return car.rear().slip(moving(state), rearTurning(state));
    }

    private double moving(double[] state) {
        return Math.max(speed(state), SLOWEST);
    }

    void lockFront(double[] state) {
        state[FRONT] = 0;
    }

    void lockRear(double[] state) {
        state[REAR] = 0;
    }

    /** Heat and work so far, J. */
    double spent(double[] state) {
        return ACCOUNT * state[SPENT];
    }

    /** Heat of both front brakes so far, J. */
    double frontWork(double[] state) {
        return ACCOUNT * state[FRONT_WORK];
    }

    /** Heat of both rear brakes so far, J. */
    double rearWork(double[] state) {
        return ACCOUNT * state[REAR_WORK];
    }

    /** Energy of motion, J. */
    double energy(double[] state) {
        return 0.5
                * (car.mass() * speed(state) * speed(state)
                        + car.front().inertia() * frontTurning(state) * frontTurning(state)
                        + car.rear().inertia() * rearTurning(state) * rearTurning(state));
    }

    /** Forces and deceleration in a state. */
    Moment moment(double[] state) {
        return body.isPresent()
                ? car.pitched(moving(state), frontSlip(state), rearSlip(state), state[MOVED])
                : car.settled(moving(state), frontSlip(state), rearSlip(state));
    }

    /** Writes the rates of a state under brake torques, with some wheels standing still. */
    void rates(Torques torques, Locked locked, double[] state, double[] rates) {
        Moment now = moment(state);
        double speed = speed(state);
        rates[DISTANCE] = speed;
        rates[SPEED] = -now.deceleration();
        rates[FRONT] = turning(car.front(), now.frontForce(), torques.front(), locked.front());
        rates[REAR] = turning(car.rear(), now.rearForce(), torques.rear(), locked.rear());
        body.ifPresent(springs -> {
            rates[MOVED] = state[MOVED_RATE];
            rates[MOVED_RATE] = springs.acceleration(car.transfer(now.deceleration()), state[MOVED], state[MOVED_RATE]);
        });
        double front = torques.front() * frontTurning(state);
        double rear = torques.rear() * rearTurning(state);
        double tyres = (now.frontForce() * frontSlip(state) + now.rearForce() * rearSlip(state)) * speed;
        double drag = (car.mass() * now.deceleration() - now.frontForce() - now.rearForce()) * speed;
        rates[FRONT_WORK] = front / ACCOUNT;
        rates[REAR_WORK] = rear / ACCOUNT;
        rates[SPENT] = (front + rear + tyres + drag) / ACCOUNT;
    }

    private static double turning(SlippingAxle axle, double force, double torque, boolean locked) {
        return locked ? 0 : axle.turningRate(force, torque);
    }
}
