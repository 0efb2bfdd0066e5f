package org.brakewright.analysis.balance;

import java.util.Locale;
import org.brakewright.model.resolved.ResolvedBrake.FrictionStates;

/** What state pads and linings are in: the same at both axles but for the last. */
public enum PadState {
    /** The first stop of a cold morning. */
    COLD("cold pads"),
    /** As they are meant to be used. */
    WORKING("working pads"),
    /** Both axles faded. */
    HOT("hot pads"),
    /** Water on both axles. */
    WET("wet pads"),
    /** The front faded, since it does most of the work, and the rear still working. */
    FRONT_FADED("front pads faded alone");

    private final String words;

    PadState(String words) {
        this.words = words;
    }

    /** For people: "wet pads". */
    public String words() {
        return words;
    }

    /** Front brake force over that of the working brake. */
    double front(FrictionStates states) {
        return this == FRONT_FADED ? states.hot() : share(states);
    }

    /** Rear brake force over that of the working brake. */
    double rear(FrictionStates states) {
        return this == FRONT_FADED ? 1 : share(states);
    }

    private double share(FrictionStates states) {
        return switch (this) {
            case COLD -> states.cold();
            case WORKING -> 1;
            case HOT, FRONT_FADED -> states.hot();
            case WET -> states.wet();
        };
    }

    /** As in the build file's keys: "cold". */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
