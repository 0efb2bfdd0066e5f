package org.brakewright.quantity;

import java.util.List;

/** What kind of thing a number measures. The SI unit of each is the one its values are kept in. */
public enum Dimension {
    /** One, as a plain number. */
    RATIO("a plain number"),
    /** Metre; also the lead of a thread (length for each turn). */
    LENGTH("a length"),
    /** Radian. */
    ANGLE("an angle"),
    /** Square metre. */
    AREA("an area"),
    /** Cubic metre. */
    VOLUME("a volume"),
    /** Kilogram. */
    MASS("a mass"),
    /** Newton. */
    FORCE("a force"),
    /** Pascal; also stress and modulus of elasticity. */
    PRESSURE("a pressure"),
    /** Newton metre. */
    TORQUE("a torque"),
    /** Metre per second. */
    SPEED("a speed"),
    /** Metre per second squared. */
    ACCELERATION("an acceleration"),
    /** Kelvin, from absolute zero. */
    TEMPERATURE("a temperature"),
    /** Kelvin, between two temperatures. */
    TEMPERATURE_DIFFERENCE("a temperature difference"),
    /** Second. */
    TIME("a time"),
    /** Newton per metre. */
    STIFFNESS("a stiffness"),
    /** Metre per pascal. */
    LENGTH_PER_PRESSURE("a length for each pressure"),
    /** Cubic metre per pascal. */
    VOLUME_PER_PRESSURE("a volume for each pressure"),
    /** Cubic metre per metre. */
    EXPANSION_PER_LENGTH("a volume for each length"),
    /** Joule. */
    ENERGY("an energy"),
    /** Watt. */
    POWER("a power"),
    /** Kilogram per cubic metre. */
    DENSITY("a density"),
    /** Joule per kilogram kelvin. */
    SPECIFIC_HEAT("a specific heat"),
    /** Watt per metre kelvin. */
    CONDUCTIVITY("a heat conductivity"),
    /** Watt per square metre kelvin. */
    HEAT_TRANSFER("a heat transfer coefficient"),
    /** Kilogram square metre. */
    INERTIA("a moment of inertia"),
    /** Radian per second. */
    ANGULAR_SPEED("an angular speed");

    private static final int LIKELY = 4;

    private final String words;

    Dimension(String words) {
        this.words = words;
    }

    /** The plain name with its article, as it stands in a sentence: "a length". */
    public String words() {
        return words;
    }

    /** Units a builder probably means, likeliest first, at most four; none for {@link #RATIO}. */
    public List<Unit> likelyUnits() {
        return this == RATIO ? List.of() : Unit.of(this).stream().limit(LIKELY).toList();
    }
}
