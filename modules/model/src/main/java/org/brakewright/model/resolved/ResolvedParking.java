package org.brakewright.model.resolved;

import java.util.Optional;
import org.brakewright.model.parking.Control;
import org.brakewright.model.vehicle.AxleEnd;

/**
 * The parking brake in SI.
 *
 * @param control what the driver works it with
 * @param driverForce N
 * @param leverRatio cable pull over the driver's force
 * @param cableEfficiency share of the pull that arrives at the wheels
 * @param axle whose wheels it holds
 * @param wheelLeverRatio force on shoe or pad over the cable pull at a wheel
 * @param forwardFactor friction force over the force on one shoe or pad when the car would roll forward
 * @param reverseFactor the same when it would roll backward
 * @param radius at which the friction acts, m
 * @param ownShoes of a drum of its own; empty when it has none or their geometry is not given
 */
public record ResolvedParking(
        Control control,
        double driverForce,
        double leverRatio,
        double cableEfficiency,
        AxleEnd axle,
        double wheelLeverRatio,
        double forwardFactor,
        double reverseFactor,
        double radius,
        Optional<ResolvedShoes> ownShoes) {}
