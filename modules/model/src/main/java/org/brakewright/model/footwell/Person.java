package org.brakewright.model.footwell;

/** Whose foot: breadth of the bare foot of British adults, as listed for the spacing of pedals (secondary source). */
public enum Person {
    /** Of 100 men 5 have a narrower foot. */
    MEN_5(0.085),
    /** A man in the middle. */
    MEN_50(0.095),
    /** Of 100 men 95 have a narrower foot. */
    MEN_95(0.110),
    /** Of 100 women 5 have a narrower foot. */
    WOMEN_5(0.080),
    /** A woman in the middle. */
    WOMEN_50(0.090),
    /** Of 100 women 95 have a narrower foot. */
    WOMEN_95(0.100);

    private final double breadth;

    Person(double breadth) {
        this.breadth = breadth;
    }

    /** Of the bare foot, m. */
    public double footBreadth() {
        return breadth;
    }
}
