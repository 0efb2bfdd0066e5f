package org.brakewright.model.hydraulics;

/** Which wheels one chamber of a tandem master feeds. */
public enum CircuitSplit {
    /** One chamber feeds both front wheels, the other both rear wheels. */
    FRONT_REAR,
    /** Each chamber feeds one front wheel and the rear wheel across. */
    DIAGONAL
}
