package org.brakewright.analysis.hydraulics;

import org.brakewright.kernel.hydraulics.EntrainedAir;
import org.brakewright.kernel.hydraulics.HoseExpansion;
import org.brakewright.kernel.hydraulics.Liquid;
import org.brakewright.kernel.hydraulics.Tube;
import org.brakewright.model.resolved.ResolvedCircuit;

/**
 * Fluid that tube, hose, liquid and air of one circuit take up under pressure.
 *
 * <p>The hose follows the shape of the hose standard's ceilings, scaled to the given expansion at 10.3 MPa. Air is
 * squeezed slowly, so isothermally.
 */
public final class LineVolume {
    private static final double POISSON_RATIO = 0.29;
    private static final double QUOTED_PRESSURE = 1500 * 6894.757293168;
    private static final HoseExpansion CEILING = HoseExpansion.EIGHTH_INCH_REGULAR;
    private static final double CEILING_AT_QUOTED = CEILING.volume(1, QUOTED_PRESSURE);

    private final ResolvedCircuit circuit;
    private final Tube tube;
    private final double liquidVolume;

    /** The line of a circuit. */
    public LineVolume(ResolvedCircuit circuit) {
        this.circuit = circuit;
        this.tube = new Tube(circuit.tubeOutsideDiameter(), circuit.tubeWall());
        this.liquidVolume = tube.boreVolume(circuit.tubeLength()) + circuit.trappedVolume();
    }

    /** The same line with a share of air in its fluid. */
    LineVolume withFreeAir(double share) {
        return new LineVolume(circuit.withFreeAir(share));
    }

    /** Volume (m3) taken up at a pressure (Pa), all causes. */
    public double total(double pressure) {
        return hoses(pressure) + tubes(pressure) + liquid(pressure) + air(pressure);
    }

    /** Volume (m3) by which hoses swell at a pressure (Pa). */
    public double hoses(double pressure) {
        double shape = CEILING.volume(circuit.hoseLength(), pressure) / CEILING_AT_QUOTED;
        return shape * circuit.hoseExpansion();
    }

    /** Volume (m3) by which tubes swell at a pressure (Pa). */
    public double tubes(double pressure) {
        return tube.swell(circuit.tubeLength(), pressure, circuit.tubeModulus(), POISSON_RATIO);
    }

    /** Volume (m3) by which the liquid shrinks at a pressure (Pa). */
    public double liquid(double pressure) {
        return Liquid.compression(liquidVolume, pressure, circuit.bulkModulus());
    }

    /** Volume (m3) that air gives up at a pressure (Pa). */
    public double air(double pressure) {
        return EntrainedAir.takenUp(liquidVolume * circuit.freeAir(), pressure, EntrainedAir.ISOTHERMAL);
    }
}
