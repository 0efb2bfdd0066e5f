package org.brakewright.drawing;

/** Line widths of ISO 128, each twice the one before (from memory). */
public enum LineWidth {
    FINE(0.18),
    NARROW(0.35),
    WIDE(0.7);

    private final double mm;

    LineWidth(double mm) {
        this.mm = mm;
    }

    public double mm() {
        return mm;
    }
}
