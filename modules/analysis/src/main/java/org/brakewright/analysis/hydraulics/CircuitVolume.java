package org.brakewright.analysis.hydraulics;

import java.util.EnumMap;
import java.util.Map;
import org.brakewright.model.resolved.ResolvedBrake;
import org.brakewright.model.resolved.ResolvedCircuit;

/**
 * Fluid that one circuit takes from its master, by cause.
 *
 * <p>The line is told by {@link LineVolume}; in front of a valve it is taken at the pressure behind it. Pistons come out in
 * proportion to the pressure until it overcomes seals or shoe springs; by then pads and shoes lie at disc and drum. What
 * pads settle by under light pressure is used up with p/(p + p_s), half of it at p_s = 0.5 MPa (an engineering estimate).
 */
public final class CircuitVolume {
    private static final int WHEELS = 2;
    private static final double SETTLING_PRESSURE = 0.5e6;

    private final ResolvedBrake brake;
    private final LineVolume line;
    private final double wayToDisc;
    private final double inProportion;

    private CircuitVolume(ResolvedBrake brake, LineVolume line) {
        this.brake = brake;
        this.line = line;
        this.wayToDisc = clearance(Double.MAX_VALUE) + knockBack(Double.MAX_VALUE);
        this.inProportion = brakeGive(1) + padGive(1) + line.tubes(1) + line.liquid(1);
    }

    /** The circuit that feeds a pair of wheel brakes. */
    public static CircuitVolume of(ResolvedBrake brake, ResolvedCircuit circuit) {
        return new CircuitVolume(brake, new LineVolume(circuit));
    }

    /** The same circuit with a share of air in its fluid. */
    CircuitVolume withFreeAir(double share) {
        return new CircuitVolume(brake, line.withFreeAir(share));
    }

    /** Volume taken at a pressure (Pa), all causes, m3. */
    public double total(double pressure) {
        return pistonsOut(pressure) * wayToDisc
                + inProportion * pressure
                + padSettling(pressure)
                + line.hoses(pressure)
                + line.air(pressure);
    }

    /** Volume taken at a pressure (Pa) by cause, m3. */
    public Map<Cause, Double> byCause(double pressure) {
        Map<Cause, Double> volumes = new EnumMap<>(Cause.class);
        volumes.put(Cause.CLEARANCE, clearance(pressure));
        volumes.put(Cause.KNOCK_BACK, knockBack(pressure));
        volumes.put(Cause.BRAKE_GIVE, brakeGive(pressure));
        volumes.put(Cause.PADS, padGive(pressure) + padSettling(pressure));
        volumes.put(Cause.HOSES, line.hoses(pressure));
        volumes.put(Cause.TUBES, line.tubes(pressure));
        volumes.put(Cause.LIQUID, line.liquid(pressure));
        volumes.put(Cause.AIR, line.air(pressure));
        return volumes;
    }

    /** Two pads a disc, or two pistons a wheel cylinder, move their clearance. */
    private double clearance(double pressure) {
        return pistonsOut(pressure)
                * switch (brake) {
                    case ResolvedBrake.Disc disc -> WHEELS * 2 * disc.pistonArea() * disc.runningClearance();
                    case ResolvedBrake.Drum drum -> WHEELS * 2 * drum.wheelCylinderArea() * drum.shoeMovement();
                };
    }

    private double knockBack(double pressure) {
        return switch (brake) {
            case ResolvedBrake.Disc disc -> pistonsOut(pressure) * WHEELS * 2 * disc.pistonArea() * disc.knockBack();
            case ResolvedBrake.Drum drum -> 0;
        };
    }

    /** Share of the way to disc or drum that the pistons have made. */
    private double pistonsOut(double pressure) {
        return pressure < brake.thresholdPressure() ? pressure / brake.thresholdPressure() : 1;
    }

    private double brakeGive(double pressure) {
        return switch (brake) {
            case ResolvedBrake.Disc disc -> WHEELS * disc.pistonArea() * disc.caliperSpread() * pressure;
            case ResolvedBrake.Drum drum -> WHEELS * 2 * drum.wheelCylinderArea() * drum.shoeCompression() * pressure;
        };
    }

    private double padGive(double pressure) {
        return switch (brake) {
            case ResolvedBrake.Disc disc -> WHEELS * 2 * disc.pistonArea() * disc.padCompression() * pressure;
            case ResolvedBrake.Drum drum -> 0;
        };
    }

    private double padSettling(double pressure) {
        return switch (brake) {
            case ResolvedBrake.Disc disc ->
                WHEELS * 2 * disc.pistonArea() * disc.padSettling() * pressure / (pressure + SETTLING_PRESSURE);
            case ResolvedBrake.Drum drum -> 0;
        };
    }
}
