package org.brakewright.model.mount;

/** Strength grade of a bolt, as stamped on its head. */
public enum BoltClass {
    /** Soft steel. */
    CLASS_4_6,
    /** Stamped 5.8. */
    CLASS_5_8,
    /** Stamped 8.8. */
    CLASS_8_8,
    /** Stamped 10.9. */
    CLASS_10_9,
    /** Stamped 12.9. */
    CLASS_12_9,
    /** Inch bolt without marks. */
    SAE_2,
    /** Inch bolt with three marks. */
    SAE_5,
    /** Inch bolt with six marks. */
    SAE_8,
    /** Stamped A2-70 or A4-70. */
    STAINLESS_70,
    /** Stamped A2-80 or A4-80. */
    STAINLESS_80
}
