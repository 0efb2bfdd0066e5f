package org.brakewright.analysis.heat;

import java.util.Arrays;
import org.brakewright.analysis.chain.ChainCurve;
import org.brakewright.kernel.dynamics.AirForces;
import org.brakewright.kernel.dynamics.Gravity;
import org.brakewright.kernel.thermal.Surroundings;
import org.brakewright.kernel.thermal.WheelHeat;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.resolved.ResolvedCar;
import org.brakewright.model.resolved.ResolvedHeat;
import org.brakewright.model.resolved.ResolvedSchedule.Leg;

/**
 * A car whose brakes warm up: the rates of its state, for any integrator.
 *
 * <p>The state holds the four temperatures of one front wheel, those of one rear wheel, then the heat brought by all brakes and the
 * heat given to the air, both over {@link #ACCOUNT}.
 */
public final class HeatedCar {
    /** Place of the first rear temperature. */
    public static final int REAR = WheelHeat.NODES;

    /** Place of the heat brought. */
    public static final int BROUGHT = 2 * WheelHeat.NODES;

    /** Place of the heat given away. */
    public static final int GIVEN = BROUGHT + 1;

    /** Places of the state. */
    public static final int PLACES = GIVEN + 1;

    /** What the accounts are kept in, J, so that they are of the size of temperatures. */
    public static final double ACCOUNT = 1e4;

    private static final int WHEELS = 2;

    private final ResolvedBuild build;
    private final ResolvedHeat heat;
    private final WheelHeat front;
    private final WheelHeat rear;
    private final BrakeSplit split;
    private final double mass;

    /** The car in its heaviest load case. */
    public HeatedCar(ResolvedBuild build, ResolvedHeat heat, ChainCurve curve) {
        this.build = build;
        this.heat = heat;
        this.front = WheelHeats.of(heat.front());
        this.rear = WheelHeats.of(heat.rear());
        this.split = new BrakeSplit(curve);
        this.mass = build.car().heaviest().mass();
    }

    /** Everything at the temperature of the air, nothing brought yet. */
    public double[] cold() {
        double[] state = new double[PLACES];
        Arrays.fill(state, 0, BROUGHT, heat.ambient());
        return state;
    }

    WheelHeat front() {
        return front;
    }

    WheelHeat rear() {
        return rear;
    }

    /**
     * Writes the rates of a state under a braking force (N) at a speed (m/s).
     *
     * @param rates where they are written
     */
    public void rates(double force, double speed, double[] state, double[] rates) {
        double share = force > 0 ? frontShare(force, state) : 0;
        double power = force * speed;
        wheels(share * power, (1 - share) * power, speed, state, rates);
        rates[BROUGHT] = power / ACCOUNT;
    }

    /**
     * Writes the rates of a state under friction heat that is known for each axle.
     *
     * @param frontPower of both front brakes, W
     * @param rearPower of both rear brakes, W
     * @param speed m/s
     * @param rates where they are written
     */
    public void heated(double frontPower, double rearPower, double speed, double[] state, double[] rates) {
        wheels(frontPower, rearPower, speed, state, rates);
        rates[BROUGHT] = (frontPower + rearPower) / ACCOUNT;
    }

    private void wheels(double frontPower, double rearPower, double speed, double[] state, double[] rates) {
        double lost = front.rates(frontPower / WHEELS, around(speed, build.car().frontTyreRadius()), state, 0, rates);
        lost += rear.rates(rearPower / WHEELS, around(speed, build.car().rearTyreRadius()), state, REAR, rates);
        rates[GIVEN] = WHEELS * lost / ACCOUNT;
    }

    /** Front share of a braking force (N) with the brakes as hot as in a state. */
    double frontShare(double force, double[] state) {
        return split.frontShare(force, frontLeft(state), rearLeft(state));
    }

    /** Front brake force at the same pressure over that of the working brake. */
    public double frontLeft(double[] state) {
        return heat.front().lining().force(state[WheelHeat.ROTOR]);
    }

    /** Rear brake force at the same pressure over that of the working brake. */
    public double rearLeft(double[] state) {
        return heat.rear().lining().force(state[REAR + WheelHeat.ROTOR]);
    }

    /** Force (N) that the brakes give in a leg at a time (s) since its start: what air and engine leave to them. */
    double force(Leg leg, double time, boolean inGear) {
        double sine = leg.fall() / Math.sqrt(1 + leg.fall() * leg.fall());
        double wanted = mass * ((1 + heat.rotatingShare()) * leg.deceleration() + Gravity.STANDARD * sine);
        return Math.max(0, wanted - drag(leg.speed(time)) - (inGear ? engine() : 0));
    }

    /** Heat stored in all brakes, J. */
    public double stored(double[] state) {
        return WHEELS * (front.stored(state, 0) + rear.stored(state, REAR));
    }

    Surroundings around(double speed, double tyreRadius) {
        return new Surroundings(speed, speed / tyreRadius, heat.ambient());
    }

    private double drag(double speed) {
        return build.car()
                .aero()
                .map(aero ->
                        new AirForces(0, 0, aero.drag()).at(speed, aero.speed()).drag())
                .orElse(0.0);
    }

    private double engine() {
        return build.car().engineBraking().map(ResolvedCar.EngineBraking::force).orElse(0.0);
    }
}
