package org.brakewright.quantity;

/**
 * The SI sizes from which every other unit follows. All exact by definition or convention.
 *
 * <p>Source: NIST Special Publication 811 (2008), appendix B.
 */
final class Sizes {
    /** Metres in an inch (international agreement of 1959). */
    static final double INCH = 0.0254;

    /** Metres in a foot: twelve inches. */
    static final double FOOT = 0.3048;

    /** Square metres in a square inch. */
    static final double SQUARE_INCH = 6.4516e-4;

    /** Cubic metres in a cubic inch. */
    static final double CUBIC_INCH = 1.6387064e-5;

    /** Kilograms in an avoirdupois pound. */
    static final double POUND = 0.45359237;

    /** Standard acceleration of free fall, m/s2. */
    static final double GRAVITY = 9.80665;

    /** Newtons in a pound-force: the pound times the standard acceleration of free fall. */
    static final double POUND_FORCE = 4.4482216152605;

    /** Pascals in a pound-force for each square inch. */
    static final double PSI = POUND_FORCE / SQUARE_INCH;

    /** Pascals in a conventional millimetre of mercury: 13 595.1 kg/m3 at standard free fall. */
    static final double MILLIMETRE_OF_MERCURY = 133.322387415;

    /** Joules in a British thermal unit of the international table. */
    static final double BTU = 1055.05585262;

    private Sizes() {}
}
