package org.brakewright.model.resolved;

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
        double freeAir) {}
