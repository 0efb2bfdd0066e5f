package org.brakewright.kernel.structure.column;

/** How a column is held at its ends; theory, with ends that give way not at all. */
public enum ColumnEnds {
    FIXED_AND_FREE(2),
    BOTH_HINGED(1),
    /** Root of tan x = x: pi over 4.4934. */
    FIXED_AND_HINGED(0.69916),
    BOTH_FIXED(0.5);

    private final double factor;

    ColumnEnds(double factor) {
        this.factor = factor;
    }

    /** Effective length over length. */
    public double factor() {
        return factor;
    }
}
