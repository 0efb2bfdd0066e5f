package org.brakewright.model.resolved;

import java.util.OptionalDouble;

/**
 * Tube, hose and fluid of one circuit in SI.
 *
 * @param tubeLength m
 * @param tubeOutsideDiameter m
 * @param tubeWall m
 * @param tubeModulus Young's modulus, Pa
 * @param hoseLength m
 * @param hoseExpansion at 10.34 MPa, m3 per m
 * @param trappedVolume fluid in calipers, cylinders and master, m3
 * @param bulkModulus Pa
 * @param freeAir share of the fluid's volume that is air at atmosphere
 * @param residualPressure that a residual valve keeps, Pa; empty without one
 * @param reservoir what feeds the circuit
 */
public record ResolvedCircuit(
        double tubeLength,
        double tubeOutsideDiameter,
        double tubeWall,
        double tubeModulus,
        double hoseLength,
        double hoseExpansion,
        double trappedVolume,
        double bulkModulus,
        double freeAir,
        OptionalDouble residualPressure,
        Reservoir reservoir) {

    /** The same circuit with a share of air in its fluid. */
    public ResolvedCircuit withFreeAir(double share) {
        return new ResolvedCircuit(
                tubeLength,
                tubeOutsideDiameter,
                tubeWall,
                tubeModulus,
                hoseLength,
                hoseExpansion,
                trappedVolume,
                bulkModulus,
                share,
                residualPressure,
                reservoir);
    }

    /**
     * What feeds a circuit.
     *
     * @param levelAboveBrakes height of its fluid over the highest bleeder, m; empty when not measured
     * @param volume usable, m3; empty when not known
     */
    public record Reservoir(OptionalDouble levelAboveBrakes, OptionalDouble volume) {}
}
