package org.brakewright.kernel.structure;

/** The six ways in which a node, or the end of a beam, can move. */
public enum Freedom {
    SHIFT_X(0),
    SHIFT_Y(1),
    SHIFT_Z(2),
    TURN_X(3),
    TURN_Y(4),
    TURN_Z(5);

    private final int index;

    Freedom(int index) {
        this.index = index;
    }

    /** Its place among the six numbers of a node. */
    int index() {
        return index;
    }
}
