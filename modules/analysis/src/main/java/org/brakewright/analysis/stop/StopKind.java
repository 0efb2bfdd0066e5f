package org.brakewright.analysis.stop;

/** Which stop. */
public enum StopKind {
    /** The builder's hard stop: its effort on the car's own grip. */
    HARD("hard stop"),
    /** The panic push on the car's own grip. */
    PANIC("panic push"),
    /** The panic push on the slippery road. */
    PANIC_SLIPPERY("panic push on the slippery road"),
    /** The most effort that rules grant with the front circuit open. */
    FRONT_OUT("front circuit open"),
    /** The same with the rear circuit open. */
    REAR_OUT("rear circuit open");

    private final String words;

    StopKind(String words) {
        this.words = words;
    }

    /** How it is called. */
    public String words() {
        return words;
    }
}
