package org.brakewright.model.footwell;

/** What is on the foot, and what it adds to its breadth (secondary source). */
public enum Shoe {
    /** Nothing. */
    BARE(0),
    /** A street shoe. */
    STREET(0.010),
    /** A heavy boot. */
    BOOTS(0.030);

    private final double adds;

    Shoe(double adds) {
        this.adds = adds;
    }

    /** To the breadth of the foot, m. */
    public double adds() {
        return adds;
    }
}
