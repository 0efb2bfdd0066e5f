package org.brakewright.drawing;

/** Where the anchor of a text stands on its baseline. */
public enum Align {
    LEFT(0),
    CENTER(0.5),
    RIGHT(1);

    private final double share;

    Align(double share) {
        this.share = share;
    }

    /** The part of the width that stands left of the anchor. */
    public double share() {
        return share;
    }

    /** The same seen in a mirror. */
    public Align mirrored() {
        return switch (this) {
            case LEFT -> RIGHT;
            case CENTER -> CENTER;
            case RIGHT -> LEFT;
        };
    }
}
