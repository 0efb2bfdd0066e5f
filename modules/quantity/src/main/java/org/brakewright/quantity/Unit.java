package org.brakewright.quantity;

import static org.brakewright.quantity.Dimension.*;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A unit of the trade with its exact size in SI.
 *
 * <p>Within a dimension the likeliest unit stands first. Sizes follow from the inch, the pound, the standard
 * acceleration of free fall, the conventional millimetre of mercury and the international table Btu (NIST SP 811, 2008,
 * appendix B); see {@link Sizes}.
 */
public enum Unit {
    PERCENT(RATIO, 0.01, "%", "percent", "pct"),

    MILLIMETRE(LENGTH, 1e-3, "mm", "millimetre", "millimetres", "millimeter", "millimeters"),
    INCH(LENGTH, Sizes.INCH, "in", "\"", "''", "inch", "inches"),
    CENTIMETRE(LENGTH, 1e-2, "cm", "centimetre", "centimetres", "centimeter", "centimeters"),
    METRE(LENGTH, 1, "m", "metre", "metres", "meter", "meters"),
    FOOT(LENGTH, Sizes.FOOT, "ft", "'", "foot", "feet"),
    THOU(LENGTH, Sizes.INCH / 1000, "thou", "mil", "mils"),
    MICROMETRE(LENGTH, 1e-6, "um", "micron", "microns"),
    KILOMETRE(LENGTH, 1e3, "km", "kilometre", "kilometres", "kilometer", "kilometers"),
    MILE(LENGTH, 5280 * Sizes.FOOT, "mi", "mile", "miles"),

    DEGREE(ANGLE, Math.PI / 180, "deg", "°", "degree", "degrees"),
    RADIAN(ANGLE, 1, "rad", "radian", "radians"),
    TURN(ANGLE, 2 * Math.PI, "turn", "turns"),

    SQUARE_MILLIMETRE(AREA, 1e-6, "mm2", "sq mm"),
    SQUARE_INCH(AREA, Sizes.SQUARE_INCH, "in2", "sq in", "square inch", "square inches"),
    SQUARE_CENTIMETRE(AREA, 1e-4, "cm2", "sq cm"),
    SQUARE_METRE(AREA, 1, "m2", "sq m"),
    SQUARE_FOOT(AREA, Sizes.FOOT * Sizes.FOOT, "ft2", "sq ft", "square foot", "square feet"),

    CUBIC_CENTIMETRE(VOLUME, 1e-6, "cc", "ml", "cm3", "cu cm", "millilitre", "millilitres", "milliliters"),
    CUBIC_INCH(VOLUME, Sizes.CUBIC_INCH, "in3", "cu in", "cubic inch", "cubic inches"),
    FLUID_OUNCE(VOLUME, 231.0 / 128 * Sizes.CUBIC_INCH, "fl oz", "us fl oz", "fluid ounce", "fluid ounces"),
    LITRE(VOLUME, 1e-3, "l", "litre", "litres", "liter", "liters"),
    CUBIC_MILLIMETRE(VOLUME, 1e-9, "mm3", "cu mm"),
    CUBIC_METRE(VOLUME, 1, "m3", "cu m"),

    KILOGRAM(MASS, 1, "kg", "kgs", "kilogram", "kilograms", "kilo", "kilos"),
    POUND(MASS, Sizes.POUND, "lb", "lbs", "lbm", "pound", "pounds"),
    GRAM(MASS, 1e-3, "g", "gram", "grams"),
    TONNE(MASS, 1000, "t", "tonne", "tonnes"),
    OUNCE(MASS, Sizes.POUND / 16, "oz", "ounce", "ounces"),

    NEWTON(FORCE, 1, "N", "newton", "newtons"),
    POUND_FORCE(FORCE, Sizes.POUND_FORCE, "lbf", "lb", "lbs", "pound", "pounds", "lbs force", "pounds force"),
    KILONEWTON(FORCE, 1000, "kN"),
    KILOGRAM_FORCE(FORCE, Sizes.GRAVITY, "kgf", "kp"),

    PSI(PRESSURE, Sizes.PSI, "psi", "psig", "lbf/in2", "lb/in2", "lb/sq in", "lbf/sq in"),
    BAR(PRESSURE, 1e5, "bar", "bars"),
    KILOPASCAL(PRESSURE, 1e3, "kPa"),
    MEGAPASCAL(PRESSURE, 1e6, "MPa", "Mpa", "mpa", "MPA", "N/mm2", "n/mm2"),
    INCH_OF_MERCURY(PRESSURE, 25.4 * Sizes.MILLIMETRE_OF_MERCURY, "inHg", "\"Hg", "inches of mercury"),
    MILLIMETRE_OF_MERCURY(PRESSURE, Sizes.MILLIMETRE_OF_MERCURY, "mmHg"),
    MILLIBAR(PRESSURE, 100, "mbar", "hPa"),
    PASCAL(PRESSURE, 1, "Pa", "N/m2"),
    GIGAPASCAL(PRESSURE, 1e9, "GPa"),
    KSI(PRESSURE, 1e3 * Sizes.PSI, "ksi"),
    MILLION_PSI(PRESSURE, 1e6 * Sizes.PSI, "Mpsi"),
    KILOGRAM_FORCE_PER_SQUARE_CENTIMETRE(PRESSURE, Sizes.GRAVITY * 1e4, "kgf/cm2", "kg/cm2"),

    NEWTON_METRE(TORQUE, 1, "N m"),
    POUND_FORCE_FOOT(TORQUE, Sizes.POUND_FORCE * Sizes.FOOT, "lbf ft", "ft lbf", "lb ft", "ft lb", "lbs ft", "ft lbs"),
    POUND_FORCE_INCH(TORQUE, Sizes.POUND_FORCE * Sizes.INCH, "lbf in", "in lbf", "lb in", "in lb", "lbs in", "in lbs"),
    KILOGRAM_FORCE_METRE(TORQUE, Sizes.GRAVITY, "kgf m", "kg m"),

    KILOMETRE_PER_HOUR(SPEED, 1 / 3.6, "km/h", "kph", "kmh", "kmph"),
    MILE_PER_HOUR(SPEED, 5280 * Sizes.FOOT / 3600, "mph"),
    METRE_PER_SECOND(SPEED, 1, "m/s"),
    FOOT_PER_SECOND(SPEED, Sizes.FOOT, "ft/s", "fps"),

    FREE_FALL(ACCELERATION, Sizes.GRAVITY, "g", "gs"),
    METRE_PER_SECOND_SQUARED(ACCELERATION, 1, "m/s2", "m/s/s"),
    FOOT_PER_SECOND_SQUARED(ACCELERATION, Sizes.FOOT, "ft/s2", "ft/s/s"),
    PERCENT_OF_FREE_FALL(ACCELERATION, Sizes.GRAVITY / 100, "%g", "% of g"),

    CELSIUS(TEMPERATURE, 1, 273.15, "°C", "C", "degC", "deg C", "celsius"),
    FAHRENHEIT(TEMPERATURE, 1 / 1.8, 459.67 / 1.8, "°F", "F", "degF", "deg F", "fahrenheit"),
    KELVIN(TEMPERATURE, 1, "K", "kelvin"),

    CELSIUS_DIFFERENCE(TEMPERATURE_DIFFERENCE, 1, "°C", "C", "degC", "deg C", "celsius"),
    FAHRENHEIT_DIFFERENCE(TEMPERATURE_DIFFERENCE, 1 / 1.8, "°F", "F", "degF", "deg F", "fahrenheit"),
    KELVIN_DIFFERENCE(TEMPERATURE_DIFFERENCE, 1, "K", "kelvin"),

    SECOND(TIME, 1, "s", "sec", "secs", "second", "seconds"),
    MILLISECOND(TIME, 1e-3, "ms", "msec", "millisecond", "milliseconds"),
    MINUTE(TIME, 60, "min", "mins", "minute", "minutes"),
    HOUR(TIME, 3600, "h", "hr", "hrs", "hour", "hours"),
    DAY(TIME, 86400, "d", "day", "days"),

    NEWTON_PER_MILLIMETRE(STIFFNESS, 1e3, "N/mm", "kN/m"),
    POUND_FORCE_PER_INCH(STIFFNESS, Sizes.POUND_FORCE / Sizes.INCH, "lbf/in", "lb/in", "lbs/in"),
    NEWTON_PER_METRE(STIFFNESS, 1, "N/m"),
    KILONEWTON_PER_MILLIMETRE(STIFFNESS, 1e6, "kN/mm"),
    KILOGRAM_FORCE_PER_MILLIMETRE(STIFFNESS, Sizes.GRAVITY * 1e3, "kgf/mm", "kg/mm"),

    MILLIMETRE_PER_BAR(LENGTH_PER_PRESSURE, 1e-8, "mm/bar"),
    INCH_PER_THOUSAND_PSI(LENGTH_PER_PRESSURE, Sizes.INCH / (1e3 * Sizes.PSI), "in/1000 psi", "in/ksi"),
    MILLIMETRE_PER_MEGAPASCAL(LENGTH_PER_PRESSURE, 1e-9, "mm/MPa", "mm/mpa", "mm/Mpa"),
    MILLIMETRE_PER_HUNDRED_BAR(LENGTH_PER_PRESSURE, 1e-10, "mm/100 bar"),
    THOU_PER_THOUSAND_PSI(LENGTH_PER_PRESSURE, Sizes.INCH / (1e6 * Sizes.PSI), "thou/1000 psi", "thou/ksi"),
    METRE_PER_PASCAL(LENGTH_PER_PRESSURE, 1, "m/Pa"),

    CC_PER_BAR(VOLUME_PER_PRESSURE, 1e-11, "cc/bar", "cm3/bar", "ml/bar"),
    CC_PER_MEGAPASCAL(VOLUME_PER_PRESSURE, 1e-12, "cc/MPa", "cc/mpa", "cc/Mpa", "cm3/MPa", "ml/MPa"),
    CUBIC_INCH_PER_THOUSAND_PSI(
            VOLUME_PER_PRESSURE, Sizes.CUBIC_INCH / (1e3 * Sizes.PSI), "in3/1000 psi", "cu in/1000 psi", "in3/ksi"),
    CC_PER_THOUSAND_PSI(VOLUME_PER_PRESSURE, 1e-9 / Sizes.PSI, "cc/1000 psi", "ml/1000 psi", "cc/ksi"),
    CUBIC_MILLIMETRE_PER_BAR(VOLUME_PER_PRESSURE, 1e-14, "mm3/bar"),
    CUBIC_METRE_PER_PASCAL(VOLUME_PER_PRESSURE, 1, "m3/Pa"),

    CC_PER_METRE(EXPANSION_PER_LENGTH, 1e-6, "cc/m", "ml/m", "cm3/m"),
    CC_PER_FOOT(EXPANSION_PER_LENGTH, 1e-6 / Sizes.FOOT, "cc/ft", "ml/ft", "cm3/ft"),
    CUBIC_INCH_PER_FOOT(EXPANSION_PER_LENGTH, Sizes.CUBIC_INCH / Sizes.FOOT, "in3/ft", "cu in/ft"),
    CUBIC_METRE_PER_METRE(EXPANSION_PER_LENGTH, 1, "m3/m"),

    KILOJOULE(ENERGY, 1e3, "kJ"),
    FOOT_POUND_FORCE(ENERGY, Sizes.POUND_FORCE * Sizes.FOOT, "ft lbf", "ft lb", "ft lbs", "lbf ft", "lb ft"),
    JOULE(ENERGY, 1, "J", "joule", "joules"),
    MEGAJOULE(ENERGY, 1e6, "MJ"),
    BTU(ENERGY, Sizes.BTU, "Btu", "btus"),

    KILOWATT(POWER, 1e3, "kW"),
    HORSEPOWER(POWER, 550 * Sizes.POUND_FORCE * Sizes.FOOT, "hp", "bhp", "horsepower"),
    WATT(POWER, 1, "W", "watt", "watts"),
    METRIC_HORSEPOWER(POWER, 75 * Sizes.GRAVITY, "PS", "metric hp"),

    KILOGRAM_PER_CUBIC_METRE(DENSITY, 1, "kg/m3"),
    GRAM_PER_CC(DENSITY, 1e3, "g/cm3", "g/cc", "g/ml", "kg/l"),
    POUND_PER_CUBIC_INCH(DENSITY, Sizes.POUND / Sizes.CUBIC_INCH, "lb/in3", "lb/cu in"),
    POUND_PER_CUBIC_FOOT(DENSITY, Sizes.POUND / (1728 * Sizes.CUBIC_INCH), "lb/ft3", "lb/cu ft"),

    JOULE_PER_KILOGRAM_KELVIN(SPECIFIC_HEAT, 1, "J/(kg K)", "J/(kg °C)", "J/kg/K", "J/kg/°C"),
    KILOJOULE_PER_KILOGRAM_KELVIN(SPECIFIC_HEAT, 1e3, "kJ/(kg K)", "kJ/(kg °C)", "kJ/kg/K"),
    BTU_PER_POUND_FAHRENHEIT(SPECIFIC_HEAT, Sizes.BTU * 1.8 / Sizes.POUND, "Btu/(lb °F)", "Btu/(lb F)"),

    WATT_PER_METRE_KELVIN(CONDUCTIVITY, 1, "W/(m K)", "W/(m °C)", "W/m/K"),
    BTU_PER_HOUR_FOOT_FAHRENHEIT(
            CONDUCTIVITY, Sizes.BTU * 1.8 / (3600 * Sizes.FOOT), "Btu/(h ft °F)", "Btu/(h ft F)", "Btu/(hr ft F)"),

    WATT_PER_SQUARE_METRE_KELVIN(HEAT_TRANSFER, 1, "W/(m2 K)", "W/(m2 °C)", "W/m2/K"),
    BTU_PER_HOUR_SQUARE_FOOT_FAHRENHEIT(
            HEAT_TRANSFER,
            Sizes.BTU * 1.8 / (3600 * Sizes.FOOT * Sizes.FOOT),
            "Btu/(h ft2 °F)",
            "Btu/(h ft2 F)",
            "Btu/(hr ft2 F)"),

    KILOGRAM_SQUARE_METRE(INERTIA, 1, "kg m2"),
    POUND_SQUARE_FOOT(INERTIA, Sizes.POUND * Sizes.FOOT * Sizes.FOOT, "lb ft2"),
    POUND_SQUARE_INCH(INERTIA, Sizes.POUND * Sizes.SQUARE_INCH, "lb in2"),
    SLUG_SQUARE_FOOT(INERTIA, Sizes.POUND_FORCE * Sizes.FOOT, "slug ft2", "lbf ft s2"),
    KILOGRAM_SQUARE_CENTIMETRE(INERTIA, 1e-4, "kg cm2"),

    REVOLUTION_PER_MINUTE(ANGULAR_SPEED, Math.PI / 30, "rpm", "rev/min"),
    RADIAN_PER_SECOND(ANGULAR_SPEED, 1, "rad/s"),
    DEGREE_PER_SECOND(ANGULAR_SPEED, Math.PI / 180, "deg/s", "°/s");

    private final Dimension dimension;
    private final double factor;
    private final double offset;

    @SuppressWarnings("ImmutableEnumChecker") // List.of never changes
    private final List<String> names;

    Unit(Dimension dimension, double factor, String... names) {
        this(dimension, factor, 0, names);
    }

    Unit(Dimension dimension, double factor, double offset, String... names) {
        this.dimension = dimension;
        this.factor = factor;
        this.offset = offset;
        this.names = List.of(names);
    }

    /** The one way this program writes the unit. */
    public String symbol() {
        return names.getFirst();
    }

    /** Every accepted spelling, the symbol first; spaces, dots, hyphens between letters and brackets do not count. */
    public List<String> names() {
        return names;
    }

    /** What the unit measures. */
    public Dimension dimension() {
        return dimension;
    }

    /** The SI value of a number in this unit. */
    public double toSi(double number) {
        return number * factor + offset;
    }

    /** The number in this unit of an SI value. */
    public double fromSi(double si) {
        return (si - offset) / factor;
    }

    /** The SI size of a difference, such as a tolerance: without the zero point of a temperature scale. */
    public double differenceToSi(double number) {
        return number * factor;
    }

    /** The number in this unit of an SI difference, such as a tolerance. */
    public double differenceFromSi(double si) {
        return si / factor;
    }

    /** The unit of that dimension with this spelling, if there is one. */
    public static Optional<Unit> find(String text, Dimension dimension) {
        return UnitNames.find(text, dimension);
    }

    /** All units of a dimension, likeliest first. */
    public static List<Unit> of(Dimension dimension) {
        return Arrays.stream(values())
                .filter(unit -> unit.dimension == dimension)
                .toList();
    }
}
