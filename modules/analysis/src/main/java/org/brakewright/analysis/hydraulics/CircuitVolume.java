package org.brakewright.analysis.hydraulics;

import java.util.EnumMap;
import java.util.Map;
import org.brakewright.kernel.hydraulics.EntrainedAir;
import org.brakewright.kernel.hydraulics.HoseExpansion;
import org.brakewright.kernel.hydraulics.Liquid;
import org.brakewright.kernel.hydraulics.Tube;
import org.brakewright.model.resolved.ResolvedBrake;
import org.brakewright.model.resolved.ResolvedCircuit;

/**
 * Fluid that one circuit takes from its master, by cause.
 *
 * <p>The hose follows the shape of the hose standard's ceilings, scaled to the given expansion at 10.3 MPa. Air is
 * squeezed slowly, so isothermally. The line in front of a proportioning valve is taken at the pressure behind it.
 */
public final class CircuitVolume {
    private static final double POISSON_RATIO = 0.29;
    private static final double SLOW = 1.0;
    private static final int WHEELS = 2;
    private static final double QUOTED_PRESSURE = 1500 * 6894.757293168;
    private static final HoseExpansion CEILING = HoseExpansion.EIGHTH_INCH_REGULAR;
    private static final double CEILING_AT_QUOTED = CEILING.volume(1, QUOTED_PRESSURE);

    private final ResolvedBrake brake;
    private final ResolvedCircuit circuit;
    private final Tube tube;
    private final double liquidVolume;

    private CircuitVolume(ResolvedBrake brake, ResolvedCircuit circuit) {
        this.brake = brake;
        this.circuit = circuit;
        this.tube = new Tube(circuit.tubeOutsideDiameter(), circuit.tubeWall());
        this.liquidVolume = tube.boreVolume(circuit.tubeLength()) + circuit.trappedVolume();
    }

    /** The circuit that feeds a pair of wheel brakes. */
    public static CircuitVolume of(ResolvedBrake brake, ResolvedCircuit circuit) {
        return new CircuitVolume(brake, circuit);
    }

    /** Volume taken at a pressure (Pa), all causes, m3. */
    public double total(double pressure) {
        return clearance() + brakeGive(pressure) + pads(pressure) + fluidAndLines(pressure);
    }

    /** Volume taken at a pressure (Pa) by cause, m3. */
    public Map<Cause, Double> byCause(double pressure) {
        Map<Cause, Double> volumes = new EnumMap<>(Cause.class);
        volumes.put(Cause.CLEARANCE, clearance());
        volumes.put(Cause.BRAKE_GIVE, brakeGive(pressure));
        volumes.put(Cause.PADS, pads(pressure));
        volumes.put(Cause.HOSES, hoses(pressure));
        volumes.put(Cause.TUBES, tubes(pressure));
        volumes.put(Cause.LIQUID, liquid(pressure));
        volumes.put(Cause.AIR, air(pressure));
        return volumes;
    }

    private double fluidAndLines(double pressure) {
        return hoses(pressure) + tubes(pressure) + liquid(pressure) + air(pressure);
    }

    /** Two pads a disc, or two pistons a wheel cylinder, move their clearance. */
    private double clearance() {
        return switch (brake) {
            case ResolvedBrake.Disc disc -> WHEELS * 2 * disc.pistonArea() * disc.runningClearance();
            case ResolvedBrake.Drum drum -> WHEELS * 2 * drum.wheelCylinderArea() * drum.shoeMovement();
        };
    }

    private double brakeGive(double pressure) {
        return switch (brake) {
            case ResolvedBrake.Disc disc -> WHEELS * disc.pistonArea() * disc.caliperSpread() * pressure;
            case ResolvedBrake.Drum drum -> WHEELS * 2 * drum.wheelCylinderArea() * drum.shoeCompression() * pressure;
        };
    }

    private double pads(double pressure) {
        return switch (brake) {
            case ResolvedBrake.Disc disc -> WHEELS * 2 * disc.pistonArea() * disc.padCompression() * pressure;
            case ResolvedBrake.Drum drum -> 0;
        };
    }

    private double hoses(double pressure) {
        double shape = CEILING.volume(circuit.hoseLength(), pressure) / CEILING_AT_QUOTED;
        return shape * circuit.hoseExpansion();
    }

    private double tubes(double pressure) {
        return tube.swell(circuit.tubeLength(), pressure, circuit.tubeModulus(), POISSON_RATIO);
    }

    private double liquid(double pressure) {
        return Liquid.compression(liquidVolume, pressure, circuit.bulkModulus());
    }

    private double air(double pressure) {
        return EntrainedAir.takenUp(liquidVolume * circuit.freeAir(), pressure, SLOW);
    }
}
