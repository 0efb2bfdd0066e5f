package org.brakewright.analysis.balance;

import org.brakewright.analysis.chain.ChainState;
import org.brakewright.kernel.dynamics.AirForces;
import org.brakewright.kernel.dynamics.AxleLoads;
import org.brakewright.kernel.dynamics.LoadSensitiveGrip;
import org.brakewright.kernel.dynamics.RoadForces;

/**
 * What acts on a braked car beside its pedal: loads, air, engine, the state of its pads, its tyres.
 *
 * <p>Brake forces stay in proportion to friction at the same pressure, so one chain serves every state of the pads.
 *
 * @param road axle loads, air and engine
 * @param frontFriction front brake force over that of the working brake at the same pressure
 * @param rearFriction the same at the rear
 * @param sensitivity grip lost per relative rise of axle load over that at rest
 */
public record Situation(RoadForces road, double frontFriction, double rearFriction, double sensitivity) {

    /** Working pads, slow, out of gear, the same grip at every load. */
    public static Situation plain(AxleLoads loads) {
        return new Situation(RoadForces.brakesOnly(loads), 1, 1, 0);
    }

    /** Whether forces and what the tyres can give are straight lines over the pedal force between two bends. */
    boolean straight() {
        return sensitivity == 0;
    }

    /** Force of the brakes of both axles, N. */
    public double brakeForce(ChainState state) {
        return frontFriction * state.frontForce() + rearFriction * state.rearForce();
    }

    /** Deceleration, g. */
    public double decelerationG(ChainState state) {
        return slowing(state) / road.loads().weight();
    }

    /** Force at the road under the front axle, N: brakes and engine. */
    public double frontForce(ChainState state) {
        return frontFriction * state.frontForce() + road.frontEngine();
    }

    /** Force at the road under the rear axle, N: brakes and engine. */
    public double rearForce(ChainState state) {
        return rearFriction * state.rearForce() + road.rearEngine();
    }

    /** Front load in N, straight on beyond the point where the rear leaves the ground. */
    double frontLoad(ChainState state) {
        return road.frontAtRest() + road.loads().heightRatio() * slowing(state);
    }

    /** Rear load in N, below zero beyond the point where the rear leaves the ground. */
    double rearLoad(ChainState state) {
        return road.rearAtRest() - road.loads().heightRatio() * slowing(state);
    }

    /** What the front tyres hold per grip at rest, N. */
    double frontHold(ChainState state) {
        return hold(frontLoad(state), road.loads().frontStatic());
    }

    /** What the rear tyres hold per grip at rest, N. */
    double rearHold(ChainState state) {
        return hold(rearLoad(state), road.loads().rearStatic());
    }

    /** Greatest deceleration with every wheel at its grip, g. */
    public double greatestG(double grip) {
        if (straight()) {
            return road.air().equals(AirForces.NONE) ? grip : road.greatestDecelerationG(grip);
        }
        return road.greatestDecelerationG(
                        tyres(grip, road.loads().frontStatic()),
                        tyres(grip, road.loads().rearStatic()))
                .orElseThrow(() -> new IllegalStateException("no steady state at grip " + grip + " of " + this));
    }

    private double hold(double load, double atRest) {
        return straight() ? load : tyres(1, atRest).force(Math.max(0, load));
    }

    private LoadSensitiveGrip tyres(double grip, double atRest) {
        return new LoadSensitiveGrip(grip, sensitivity, atRest);
    }

    private double slowing(ChainState state) {
        return brakeForce(state)
                + road.frontEngine()
                + road.rearEngine()
                + road.air().drag();
    }
}
