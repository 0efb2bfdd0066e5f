package org.brakewright.model.brake;

/** How pressure is spread over a pad. */
public enum PadPressure {
    /** Bedded pads: pressure falls with radius so that wear is even. */
    UNIFORM_WEAR,
    /** New pads on a stiff back plate. */
    UNIFORM_PRESSURE
}
