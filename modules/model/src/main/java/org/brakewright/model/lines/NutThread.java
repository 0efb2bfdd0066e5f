package org.brakewright.model.lines;

/**
 * Threads of nuts and ports of brake lines, with the tube they are usual for. Pairs of thread and tube: SAE J512,
 * SAE J514, ISO 4038; those of 37 degrees and above 1/4 in from memory.
 */
public enum NutThread {
    M10X1(10e-3, 1e-3, 4.75e-3),
    M12X1(12e-3, 1e-3, 6e-3),
    M14X1_5(14e-3, 1.5e-3, 8e-3),
    M16X1_5(16e-3, 1.5e-3, 10e-3),
    UNF_3_8_24(9.525e-3, 25.4e-3 / 24, 4.7625e-3),
    UNF_7_16_24(11.1125e-3, 25.4e-3 / 24, 6.35e-3),
    UNF_7_16_20(11.1125e-3, 25.4e-3 / 20, 6.35e-3),
    UNF_1_2_20(12.7e-3, 25.4e-3 / 20, 7.9375e-3),
    UNF_9_16_18(14.2875e-3, 25.4e-3 / 18, 9.525e-3),
    UNF_5_8_18(15.875e-3, 25.4e-3 / 18, 9.525e-3);

    private final double diameter;
    private final double pitch;
    private final double tube;

    NutThread(double diameter, double pitch, double tube) {
        this.diameter = diameter;
        this.pitch = pitch;
        this.tube = tube;
    }

    /** Outside diameter, m. */
    public double diameter() {
        return diameter;
    }

    /** From turn to turn, m. */
    public double pitch() {
        return pitch;
    }

    /** Outside diameter of the tube it is usual for, m. */
    public double tube() {
        return tube;
    }
}
