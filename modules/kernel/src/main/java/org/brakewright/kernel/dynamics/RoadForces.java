package org.brakewright.kernel.dynamics;

import java.util.OptionalDouble;

/**
 * A car that slows in moving air and in gear: axle loads with the air's share, and what the brakes need not do.
 *
 * <p>Air and engine act as steady forces: the air as loads at the axles and drag, drag's own pitch being within those
 * loads, the engine at the road under its driven axle. Quasi-static otherwise, as {@link AxleLoads}.
 *
 * @param loads the car at rest
 * @param air what the air does at the speed looked at
 * @param frontEngine what the engine holds back at the front wheels, N
 * @param rearEngine what the engine holds back at the rear wheels, N
 */
public record RoadForces(AxleLoads loads, AirForces air, double frontEngine, double rearEngine) {
    public RoadForces {
        Require.notNegative("frontEngine", frontEngine);
        Require.notNegative("rearEngine", rearEngine);
        Require.that(loads.frontStatic() + air.front() > 0, "front", air.front(), "must leave the axle on the road");
        Require.that(loads.rearStatic() + air.rear() > 0, "rear", air.rear(), "must leave the axle on the road");
    }

    /** A slow car out of gear: nothing but its brakes. */
    public static RoadForces brakesOnly(AxleLoads loads) {
        return new RoadForces(loads, AirForces.NONE, 0, 0);
    }

    /** All load on the road, N. */
    public double wholeLoad() {
        return loads.weight() + air.front() + air.rear();
    }

    /** Front axle load, N, at a deceleration over g; the whole load past the point where the rear leaves the road. */
    public double front(double decelerationG) {
        return Math.clamp(frontAtRest() + transfer(decelerationG), 0, wholeLoad());
    }

    /** Rear axle load, N, at a deceleration over g. */
    public double rear(double decelerationG) {
        return Math.clamp(rearAtRest() - transfer(decelerationG), 0, wholeLoad());
    }

    /** Front axle load, N, without deceleration. */
    public double frontAtRest() {
        return loads.frontStatic() + air.front();
    }

    /** Rear axle load, N, without deceleration. */
    public double rearAtRest() {
        return loads.rearStatic() + air.rear();
    }

    /** Deceleration over g that drag and engine give with the foot off. */
    public double footOffG() {
        return (air.drag() + frontEngine + rearEngine) / loads.weight();
    }

    /** Deceleration over g for a force of the brakes, N. */
    public double decelerationG(double brakeForce) {
        return footOffG() + brakeForce / loads.weight();
    }

    /** Force that the brakes must add for a deceleration over g, N; below zero where drag and engine alone give more. */
    public double brakeForce(double decelerationG) {
        return (decelerationG - footOffG()) * loads.weight();
    }

    /** Deceleration over g at which the rear wheels leave the road. */
    public double liftOffDecelerationG() {
        return rearAtRest() / (loads.weight() * loads.heightRatio());
    }

    /**
     * Deceleration over g at which both axles of a fixed split lock together, out of gear; drag does not move it.
     *
     * @param rearForceShare share of the rear axle in the brakes' force, 0 to 1
     */
    public double criticalDecelerationG(double rearForceShare) {
        Require.fraction("rearForceShare", rearForceShare);
        Require.that(frontEngine + rearEngine == 0, "engine", frontEngine + rearEngine, "must be out of gear here");
        return (rearAtRest() - rearForceShare * wholeLoad()) / (loads.weight() * loads.heightRatio());
    }

    /** Greatest deceleration over g with every wheel at its grip. */
    public double greatestDecelerationG(double grip) {
        Require.positive("grip", grip);
        return (grip * wholeLoad() + air.drag()) / loads.weight();
    }

    /** Greatest deceleration over g when the grip falls with the load; empty when no steady state is found. */
    public OptionalDouble greatestDecelerationG(LoadSensitiveGrip front, LoadSensitiveGrip rear) {
        double z = greatestDecelerationG(Math.max(front.grip(), rear.grip()));
        for (int i = 0; i < 100; i++) {
            double next = (front.force(front(z)) + rear.force(rear(z)) + air.drag()) / loads.weight();
            if (Math.abs(next - z) <= 1e-13 * next) {
                return OptionalDouble.of(next);
            }
            z = next;
        }
        return OptionalDouble.empty();
    }

    private double transfer(double decelerationG) {
        return decelerationG * loads.weight() * loads.heightRatio();
    }
}
