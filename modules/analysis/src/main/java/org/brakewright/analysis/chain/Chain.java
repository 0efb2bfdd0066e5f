package org.brakewright.analysis.chain;

import java.util.function.DoubleUnaryOperator;
import org.brakewright.analysis.brake.AxleBrake;
import org.brakewright.analysis.hydraulics.ApplyChain;
import org.brakewright.analysis.hydraulics.ApplyState;
import org.brakewright.analysis.hydraulics.Piston.Feeds;
import org.brakewright.analysis.hydraulics.PistonState;
import org.brakewright.analysis.pedal.Lever;
import org.brakewright.analysis.pedal.LeverState;
import org.brakewright.kernel.roots.Crossing;
import org.brakewright.kernel.roots.Crossing.Bounds;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.resolved.ResolvedPedal;
import org.brakewright.model.vehicle.AxleEnd;

/**
 * The whole way from the force at the pad to the brake forces of both axles, wheels turning.
 *
 * <p>Maintainer's note. The thrust behind the pedal is the free variable: it gives both masters' pressures and strokes,
 * these the rod's travel, that the pedal's ratio, and the ratio the force at the pad. So nothing but the bar's tilt has to
 * be searched for at a thrust.
 */
public final class Chain {
    /** Rod travel (m) beyond the end of any lever. */
    private static final double BEYOND = 1e3;

    private final ResolvedPedal pedal;
    private final Lever lever;
    private final ApplyChain apply;
    private final AxleBrake front;
    private final AxleBrake rear;

    private Chain(ResolvedPedal pedal, Lever lever, ApplyChain apply, AxleBrake front, AxleBrake rear) {
        this.pedal = pedal;
        this.lever = lever;
        this.apply = apply;
        this.front = front;
        this.rear = rear;
    }

    /** The chain of a build. */
    public static Chain of(ResolvedBuild build) {
        return new Chain(
                build.pedal(),
                Lever.of(build.pedal()),
                ApplyChain.of(build),
                AxleBrake.of(build.front(), build.car().frontTyreRadius()),
                AxleBrake.of(build.rear(), build.car().rearTyreRadius()));
    }

    /** The same car with a dead booster. */
    public Chain unassisted() {
        return new Chain(pedal, lever, apply.unassisted(), front, rear);
    }

    /** The same car with the circuit of one piston open: the one that fills the front (or the left front wheel), or the other. */
    public Chain failed(AxleEnd piston) {
        return new Chain(pedal, lever, apply.failed(piston), front, rear);
    }

    /** The same car with a share of air in the fluid of one piston's circuit. */
    public Chain aired(AxleEnd piston, double share) {
        return new Chain(pedal, lever, ApplyChain.withAir(apply, piston, share), front, rear);
    }

    /** Brake force (N) that one piston gives the wheels of an axle that hang on it. */
    public double force(AxleEnd axle, AxleEnd piston, ApplyState masters) {
        boolean first = piston == AxleEnd.FRONT;
        AxleBrake brake = axle == AxleEnd.FRONT ? front : rear;
        Feeds feeds = first ? apply.front().feeds() : apply.rear().feeds();
        return ofPiston(feeds, axle, first ? masters.front() : masters.rear(), brake::force);
    }

    /** The pedal. */
    public Lever lever() {
        return lever;
    }

    /** Masters and bar. */
    public ApplyChain apply() {
        return apply;
    }

    /** Everything under a thrust (N) behind the pedal. */
    public Pushed pushed(double thrust) {
        ApplyState masters = apply.at(thrust);
        LeverState lever = this.lever.at(masters.rodTravel() + pedal.slack());
        double pedalForce = thrust / (lever.ratio() * pedal.efficiency());
        double given = pedalForce / pedal.mountStiffness() + pedalForce / pedal.armStiffness();
        return new Pushed(
                state(pedalForce, thrust, masters), masters, lever, pedal.freePlay() + lever.padTravel() + given);
    }

    private ChainState state(double pedalForce, double thrust, ApplyState masters) {
        return new ChainState(
                pedalForce,
                thrust,
                pressure(AxleEnd.FRONT, masters),
                pressure(AxleEnd.REAR, masters),
                overPistons(AxleEnd.FRONT, masters, front::force),
                overPistons(AxleEnd.REAR, masters, rear::force));
    }

    /** Mean over both wheels; 0 when no piston fills the axle any more. */
    private double pressure(AxleEnd axle, ApplyState masters) {
        double shares = apply.front().feeds().share(axle) + apply.rear().feeds().share(axle);
        return shares == 0 ? 0 : overPistons(axle, masters, pressure -> pressure) / shares;
    }

    /** Sum over both pistons of what the pressure at the axle's wheels gives, each by its share of the axle. */
    private double overPistons(AxleEnd axle, ApplyState masters, DoubleUnaryOperator ofPressure) {
        return ofPiston(apply.front().feeds(), axle, masters.front(), ofPressure)
                + ofPiston(apply.rear().feeds(), axle, masters.rear(), ofPressure);
    }

    private static double ofPiston(Feeds feeds, AxleEnd axle, PistonState piston, DoubleUnaryOperator ofPressure) {
        double share = feeds.share(axle);
        return share == 0
                ? 0
                : share * ofPressure.applyAsDouble(feeds.line(axle).atWheels(piston.pressure()));
    }

    /** Everything under a pedal force (N). */
    public Pushed atPedalForce(double pedalForce) {
        double atRest = pedal.efficiency() * lever.at(0).ratio() * pedalForce;
        if (lever.straight()) {
            return pushed(atRest);
        }
        Bounds bounds = new Bounds(0, Math.max(atRest, lastThrust(pedalForce)), 1e-9 * atRest);
        return pushed(Crossing.rising(
                thrust -> pushed(thrust).state().pedalForce() - pedalForce, bounds, bounds.high(), atRest * 0.999));
    }

    /** Whether pressures and pedal force rise in straight lines between the bends. */
    boolean straight() {
        return lever.straight() && apply.straight();
    }

    /** Thrust (N) that a pedal force (N) gives where the lever goes straight on. */
    double lastThrust(double pedalForce) {
        return pedalForce * pedal.efficiency() * lever.at(BEYOND).ratio();
    }

    /** Thrusts (N) at which something in the chain sets in or ends, rising. */
    public double[] bends() {
        return apply.bends().filter(thrust -> thrust > 0).sorted().toArray();
    }
}
