package org.brakewright.sheets;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.brakewright.drawing.Point;

/** Lengths and angles as a shop reads them: mm to a tenth, inches to a thousandth, degrees to a tenth. */
public final class Measure {
    private static final double MM = 1e3;
    private static final double INCH = 25.4e-3;

    private Measure() {}

    /** A length (m) in mm, for coordinates of a drawing. */
    public static double mm(double metre) {
        return metre * MM;
    }

    /** A place (m) on a drawing. */
    public static Point place(double xMetre, double yMetre) {
        return new Point(mm(xMetre), mm(yMetre));
    }

    /** A length (m): "96.0 mm". */
    public static String metric(double metre) {
        return fixed(mm(metre), 1) + " mm";
    }

    /** A length (m) both ways: "96.0 mm (3.780 in)". */
    public static String both(double metre) {
        return metric(metre) + " (" + fixed(metre / INCH, 3) + " in)";
    }

    /** An angle (rad): "12.5°". */
    public static String degrees(double radian) {
        return fixed(Math.toDegrees(radian), 1) + "°";
    }

    /** A share: "56 %". */
    public static String percent(double share) {
        return fixed(100 * share, 0) + " %";
    }

    /** A number with so many decimals. */
    public static String fixed(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return (rounded.signum() == 0 ? rounded.abs() : rounded).toPlainString();
    }
}
