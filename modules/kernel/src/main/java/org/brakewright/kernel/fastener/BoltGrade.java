package org.brakewright.kernel.fastener;

/**
 * Strength grades of bolts.
 *
 * <p>Sources: ISO 898-1 for property classes up to 16 mm (8.8) or any size, SAE J429 for inch grades up to 3/4 in, ISO
 * 3506-1 for stainless (which states yield instead of proof); all from memory.
 */
public enum BoltGrade {
    CLASS_4_6(225, 400),
    CLASS_5_8(380, 500),
    CLASS_8_8(580, 800),
    CLASS_10_9(830, 1040),
    CLASS_12_9(970, 1220),
    SAE_2(379, 510),
    SAE_5(586, 827),
    SAE_8(827, 1034),
    STAINLESS_70(450, 700),
    STAINLESS_80(600, 800);

    /** Shear strength over tensile strength of bolt steel: Shigley and EN 1993-1-8, table 3.4 (from memory). */
    private static final double SHEAR = 0.6;

    private final double proof;

    private final double tensile;

    BoltGrade(double proof, double tensile) {
        this.proof = proof;
        this.tensile = tensile;
    }

    /** Stress it takes without lasting stretch, Pa. */
    public double proofStress() {
        return proof * 1e6;
    }

    /** Pa. */
    public double tensileStrength() {
        return tensile * 1e6;
    }

    /** Pa. */
    public double shearStrength() {
        return SHEAR * tensileStrength();
    }
}
