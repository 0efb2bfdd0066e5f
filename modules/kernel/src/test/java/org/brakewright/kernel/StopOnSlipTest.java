package org.brakewright.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.brakewright.kernel.dynamics.AirForces;
import org.brakewright.kernel.dynamics.AxleLoads;
import org.brakewright.kernel.dynamics.LoadSensitiveGrip;
import org.brakewright.kernel.dynamics.PitchingBody;
import org.brakewright.kernel.dynamics.SlipCurve;
import org.brakewright.kernel.dynamics.SlippingAxle;
import org.brakewright.kernel.dynamics.SlippingCar;
import org.brakewright.kernel.dynamics.SlippingCar.Moment;
import org.brakewright.kernel.ode.Integration;
import org.brakewright.kernel.ode.Integrator;
import org.brakewright.kernel.ode.Precision;
import org.brakewright.kernel.ode.Rates;
import org.brakewright.kernel.ode.Span;
import org.brakewright.kernel.ode.Threshold;
import org.brakewright.kernel.ode.Watcher;
import org.junit.jupiter.api.Test;

/** A car on slipping wheels, followed over time: what it loses in motion is found again as heat. */
class StopOnSlipTest {
    private static final Precision FINE = new Precision(1e-9, 1e-10);
    private static final double POUND = 4.4482216152605;
    private static final double FOOT = 0.3048;
    private static final int DISTANCE = 0;
    private static final int SPEED = 1;
    private static final int FRONT = 2;
    private static final int REAR = 3;
    private static final int HEAT = 4;

    /** Conservation of energy, to 1e-6: motion lost is heat in the brakes, heat under the tires and work on the air. */
    @Test
    void losesNoEnergy() {
        SlippingCar car = car(12_000, 0.4, 1.0, new AirForces(0, 0, 800));
        double[] state = rolling(car, 30);
        double before = energy(car, state);
        Integration ended = follow(car, 1000, 700, state, 2);
        assertThat(ended).isInstanceOf(Integration.Reached.class);
        assertThat(before - energy(car, state)).isCloseTo(state[HEAT], withinPercentage(1e-4));
        assertThat(state[HEAT]).isGreaterThan(0.4 * before);
    }

    /**
     * T. D. Gillespie, Fundamentals of Vehicle Dynamics, ch. 3, example 1 (from memory): 3635 lb from 60 mph under a steady
     * 2000 lb at the road stop within 218.6 ft. The brakes hold back the wheels' own turning as well, I a/R; the last 1 m/s
     * by the closed form.
     */
    @Test
    void stopsTheLightTruck() {
        double g = 32.2 * FOOT;
        double mass = 3635 * POUND / g;
        SlippingCar car = car(mass * 9.80665, 1, 0.9, AirForces.NONE);
        double torque = 1000 * POUND * 0.3 + 2000 * POUND / mass / 0.3;
        double[] state = rolling(car, 88 * FOOT);
        Integration ended = follow(car, torque, torque, state, 10);
        assertThat(ended).isInstanceOf(Integration.Ended.class);
        double rest = state[SPEED] * state[SPEED] / (2 * 2000 * POUND / mass);
        assertThat((state[DISTANCE] + rest) / FOOT).isCloseTo(218.552, withinPercentage(0.05));
    }

    /** A brake stronger than the road stops its wheels, whether the car still moves or not, and the threshold tells when. */
    @Test
    void locksTheWheelsOfABrakeThatIsTooStrong() {
        SlippingCar car = car(12_000, 1.5, 0.8, AirForces.NONE);
        double[] state = rolling(car, 30);
        Integration ended = follow(car, 4000, 100, state, 5);
        assertThat(ended).isInstanceOfSatisfying(Integration.Ended.class, end -> {
            assertThat(end.threshold()).isEqualTo(1);
            assertThat(state[FRONT]).isCloseTo(0, within(1e-6));
            assertThat(state[SPEED]).isGreaterThan(25);
            assertThat(end.time()).isLessThan(1);
        });
    }

    /** Grid-free: allowing a hundredth of the error moves the distance by less than a millimeter in some 50 m. */
    @Test
    void doesNotDependOnItsSteps() {
        SlippingCar car = car(12_000, 1.5, 0.9, new AirForces(0, 0, 800));
        double[] coarse = rolling(car, 30);
        double[] fine = rolling(car, 30);
        Integrator.follow(rates(car, 800, 400), new Span(0, 6, 0), coarse, new Precision(1e-6, 1e-7), standing());
        Integrator.follow(rates(car, 800, 400), new Span(0, 6, 0), fine, new Precision(1e-8, 1e-9), standing());
        assertThat(coarse[DISTANCE]).isCloseTo(fine[DISTANCE], within(1e-3));
        assertThat(fine[DISTANCE]).isGreaterThan(40);
    }

    /** Closed form: without damping the load moved swings about the steady one, twice as far as it has to go. */
    @Test
    void pitchesAboutTheSteadyLoad() {
        PitchingBody body = new PitchingBody(10, 0);
        double[] state = {0, 0};
        double[] most = {0};
        Integrator.follow(
                (time, at, rates) -> {
                    rates[0] = at[1];
                    rates[1] = body.acceleration(1000, at[0], at[1]);
                },
                new Span(0, 2 * Math.PI / 10, 8),
                state,
                new Precision(1e-9, 1e-10),
                (time, at) -> most[0] = Math.max(most[0], at[0]));
        assertThat(most[0]).isCloseTo(2000, within(1e-3));
        assertThat(state[0]).isCloseTo(0, within(1e-3));
    }

    private static Integration follow(
            SlippingCar car, double frontTorque, double rearTorque, double[] state, double time) {
        return Integrator.follow(rates(car, frontTorque, rearTorque), new Span(0, time, 0), state, FINE, standing());
    }

    private static Rates rates(SlippingCar car, double frontTorque, double rearTorque) {
        return (time, at, rates) -> {
            double frontSlip = car.front().slip(at[SPEED], at[FRONT]);
            double rearSlip = car.rear().slip(at[SPEED], at[REAR]);
            Moment now = car.settled(at[SPEED], frontSlip, rearSlip);
            rates[DISTANCE] = at[SPEED];
            rates[SPEED] = -now.deceleration();
            rates[FRONT] = car.front().turningRate(now.frontForce(), frontTorque);
            rates[REAR] = car.rear().turningRate(now.rearForce(), rearTorque);
            double brakes = frontTorque * at[FRONT] + rearTorque * at[REAR];
            double tires = (now.frontForce() * frontSlip + now.rearForce() * rearSlip) * at[SPEED];
            double air = car.air().at(at[SPEED], car.airSpeed()).drag() * at[SPEED];
            rates[HEAT] = brakes + tires + air;
        };
    }

    /** Ends near standstill, or when a front wheel stops turning. */
    private static Watcher standing() {
        return new Watcher() {
            @Override
            public void see(double time, double[] state) {}

            @Override
            public List<Threshold> ends() {
                return List.of((time, at) -> at[SPEED] - 1, (time, at) -> at[FRONT]);
            }
        };
    }

    private static double[] rolling(SlippingCar car, double speed) {
        double turning = speed / car.front().rollingRadius();
        return new double[] {0, speed, turning, turning, 0};
    }

    private static double energy(SlippingCar car, double[] state) {
        return 0.5 * car.mass() * state[SPEED] * state[SPEED]
                + 0.5 * car.front().inertia() * state[FRONT] * state[FRONT]
                + 0.5 * car.rear().inertia() * state[REAR] * state[REAR];
    }

    private static SlippingCar car(double weight, double inertia, double grip, AirForces air) {
        AxleLoads loads = new AxleLoads(0.52 * weight, 0.48 * weight, 2.6, 0.52);
        SlipCurve curve = SlipCurve.of(0.1, 0.8);
        return new SlippingCar(
                loads,
                air,
                40,
                new SlippingAxle(0.3, inertia, new LoadSensitiveGrip(grip, 0, loads.frontStatic()), curve),
                new SlippingAxle(0.3, inertia, new LoadSensitiveGrip(grip, 0, loads.rearStatic()), curve));
    }
}
