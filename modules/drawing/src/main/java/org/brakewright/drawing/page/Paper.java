package org.brakewright.drawing.page;

/**
 * Trimmed sizes of paper, upright: ISO 216 and ANSI Y14.1 (A, 8.5 x 11 in, and B, 11 x 17 in, from memory). What is
 * printed keeps 10 mm from the edges of its paper and of its partner's across the sea, so that a file for one can be
 * printed, centered and not scaled, on the other.
 */
public enum Paper {
    A4(210, 297),
    LETTER(8.5 * 25.4, 11 * 25.4),
    A3(297, 420),
    TABLOID(11 * 25.4, 17 * 25.4);

    /** White edge, mm. */
    public static final double MARGIN = 10;

    private final double width;
    private final double height;

    Paper(double width, double height) {
        this.width = width;
        this.height = height;
    }

    /** Short side, mm. */
    public double width() {
        return width;
    }

    /** Long side, mm. */
    public double height() {
        return height;
    }

    /** The paper of the same class in the other system. */
    public Paper partner() {
        return switch (this) {
            case A4 -> LETTER;
            case LETTER -> A4;
            case A3 -> TABLOID;
            case TABLOID -> A3;
        };
    }
}
