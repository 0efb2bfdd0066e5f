package org.brakewright.analysis.setting;

import java.util.Arrays;

/** Bores in which master cylinders and wheel cylinders are commonly made; common practice, no source. */
public final class StockBores {
    private static final double INCH = 0.0254;

    /** 5/8, 0.70, 3/4, 13/16, 7/8, 15/16, 1, 1-1/16, 1-1/8, 1-1/4 in. */
    private static final double[] MASTERS = inches(0.625, 0.70, 0.75, 0.8125, 0.875, 0.9375, 1.0, 1.0625, 1.125, 1.25);

    /** 5/8, 11/16, 0.70, 3/4, 13/16, 7/8, 15/16, 1, 1-1/16, 1-1/8 in. */
    private static final double[] WHEEL_CYLINDERS =
            inches(0.625, 0.6875, 0.70, 0.75, 0.8125, 0.875, 0.9375, 1.0, 1.0625, 1.125);

    private StockBores() {}

    /** Master bores, m. */
    static double[] masters() {
        return MASTERS.clone();
    }

    /** Master bore a number of stock sizes away, or NaN beyond the range. */
    public static double master(double bore, int steps) {
        return step(MASTERS, bore, steps);
    }

    /** Wheel cylinder bore a number of stock sizes away, or NaN beyond the range. */
    public static double wheelCylinder(double bore, int steps) {
        return step(WHEEL_CYLINDERS, bore, steps);
    }

    private static double step(double[] sizes, double bore, int steps) {
        double tolerance = 0.005 * bore;
        double[] away = Arrays.stream(sizes)
                .filter(size -> steps > 0 ? size > bore + tolerance : size < bore - tolerance)
                .sorted()
                .toArray();
        int index = steps > 0 ? steps - 1 : away.length + steps;
        return index >= 0 && index < away.length ? away[index] : Double.NaN;
    }

    private static double[] inches(double... sizes) {
        return Arrays.stream(sizes).map(size -> size * INCH).toArray();
    }
}
