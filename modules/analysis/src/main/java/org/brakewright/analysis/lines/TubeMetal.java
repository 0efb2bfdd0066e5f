package org.brakewright.analysis.lines;

import org.brakewright.model.lines.TubeMaterial;

/**
 * What the metal of a tube is at least, soft as it is sold.
 *
 * <p>Sources: steel, SAE J527 double-wall (yield 170, tensile 290 MPa); copper-nickel C70600 annealed, ASTM B466 (90 and
 * 260 MPa, from memory); stainless 304 annealed, ASTM A269 (205 and 515 MPa, from memory); soft copper C12200, ASTM B75
 * (62 and 200 MPa, from memory); aluminium 3003-O (35 and 95 MPa, from memory). Young's modulus and Poisson's ratio:
 * handbook values, from memory.
 *
 * @param yield Pa
 * @param tensile Pa
 * @param youngsModulus Pa
 * @param poissonRatio -
 */
public record TubeMetal(double yield, double tensile, double youngsModulus, double poissonRatio) {
    private static final TubeMetal STEEL = new TubeMetal(170e6, 290e6, 205e9, 0.29);
    private static final TubeMetal STAINLESS = new TubeMetal(205e6, 515e6, 193e9, 0.29);
    private static final TubeMetal COPPER_NICKEL = new TubeMetal(90e6, 260e6, 135e9, 0.33);
    private static final TubeMetal COPPER = new TubeMetal(62e6, 200e6, 117e9, 0.34);
    private static final TubeMetal ALUMINIUM = new TubeMetal(35e6, 95e6, 69e9, 0.33);

    /** The metal of a material. */
    public static TubeMetal of(TubeMaterial material) {
        return switch (material) {
            case STEEL -> STEEL;
            case STAINLESS_STEEL -> STAINLESS;
            case COPPER_NICKEL -> COPPER_NICKEL;
            case COPPER -> COPPER;
            case ALUMINIUM -> ALUMINIUM;
        };
    }
}
