package org.brakewright.app.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.brakewright.findings.Figure;
import org.brakewright.quantity.Dimension;
import org.brakewright.quantity.QuantityWriter;
import org.brakewright.quantity.Unit;

/** Shows SI values to people, rounded as a tape, scale or gauge would read. */
public final class Show {
    private final UnitSystem system;

    /** Shows in a system of units. */
    public Show(UnitSystem system) {
        this.system = system;
    }

    /** The system shown in. */
    public UnitSystem system() {
        return system;
    }

    /** A typed value with its unit. */
    public String figure(Figure figure) {
        return figure(figure, 0);
    }

    /** The same with more decimals than a gauge would read. */
    public String figure(Figure figure, int moreDecimals) {
        return value(figure.value(), figure.dimension(), moreDecimals);
    }

    /** An SI value of some kind with its unit. */
    public String value(double si, Dimension dimension) {
        return value(si, dimension, 0);
    }

    private String value(double si, Dimension dimension, int moreDecimals) {
        if (dimension == Dimension.RATIO) {
            return number(si, moreDecimals);
        }
        Unit unit = unit(si, dimension);
        double shown = unit.fromSi(si);
        return rounded(shown, decimals(shown, unit) + moreDecimals) + " " + unit.symbol();
    }

    /** A stress, Pa. */
    public String stress(double pascal) {
        if (system == UnitSystem.US) {
            return value(pascal, Dimension.PRESSURE, Unit.PSI);
        }
        return rounded(pascal / 1e6, pascal < 10e6 ? 1 : 0) + " " + Unit.MEGAPASCAL.symbol();
    }

    /** A mass of a small part, kg, to a hundredth. */
    public String mass(double kilogram) {
        Unit unit = system.unit(Dimension.MASS);
        return rounded(unit.fromSi(kilogram), 2) + " " + unit.symbol();
    }

    /** A share in per cent. */
    public String percent(double share) {
        return percent(share, 0);
    }

    /** A share in per cent with some decimals. */
    public String percent(double share, int decimals) {
        return rounded(100 * share, decimals) + " %";
    }

    /** A plain number with fixed decimals, so that numbers in a column stand under each other. */
    public String fixed(double value, int decimals) {
        return rounded(value, decimals);
    }

    /** A plain number, three significant digits at most. */
    public String number(double value) {
        return number(value, 0);
    }

    private static String number(double value, int moreDecimals) {
        double size = Math.abs(value);
        int decimals = size >= 100 ? 0 : size >= 10 ? 1 : size >= 0.1 || size == 0 ? 2 : 4;
        String text = rounded(value, decimals + moreDecimals);
        return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
    }

    /** A bore: the fraction on the part when it is one, with millimetres. */
    public String bore(double metres) {
        String millimetres = value(metres, Dimension.LENGTH, Unit.MILLIMETRE);
        return QuantityWriter.fraction(metres)
                .map(fraction -> fraction + " (" + millimetres + ")")
                .orElse(millimetres);
    }

    /** An SI value in a given unit. */
    public String value(double si, Dimension dimension, Unit unit) {
        double shown = unit.fromSi(si);
        return rounded(shown, decimals(shown, unit)) + " " + unit.symbol();
    }

    private Unit unit(double si, Dimension dimension) {
        if (dimension == Dimension.PRESSURE && si > 1e9) {
            return Unit.GIGAPASCAL;
        }
        if (dimension == Dimension.LENGTH && si >= 1.5) {
            return system == UnitSystem.US ? Unit.FOOT : Unit.METRE;
        }
        if (dimension == Dimension.TIME && si >= 120) {
            return Unit.MINUTE;
        }
        return system.unit(dimension);
    }

    private static int decimals(double shown, Unit unit) {
        double size = Math.abs(shown);
        return switch (unit) {
            case NEWTON, POUND_FORCE, PSI, KILOGRAM, POUND, KILOMETRE_PER_HOUR, MILE_PER_HOUR -> 0;
            case FREE_FALL, GIGAPASCAL -> 2;
            case METRE, FOOT -> size < 10 ? 2 : 1;
            case INCH -> size < 0.1 ? 3 : 2;
            case MILLIMETRE -> size < 1 ? 2 : size < 30 ? 1 : 0;
            case BAR, DEGREE -> 1;
            case CELSIUS, FAHRENHEIT -> size >= 100 ? 0 : 1;
            default -> size >= 100 ? 0 : size >= 10 ? 1 : size >= 1 ? 2 : 3;
        };
    }

    private static String rounded(double value, int decimals) {
        return BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString();
    }
}
