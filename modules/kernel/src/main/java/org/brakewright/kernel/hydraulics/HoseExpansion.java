package org.brakewright.kernel.hydraulics;

import java.util.ArrayList;
import java.util.List;

/**
 * How much a flexible hose swells: volume per length against pressure, straight between the points, from nothing at no
 * pressure.
 *
 * <p>The constants are ceilings that 49 CFR 571.106, Table I allows, not typical values; the figures are from memory.
 * "Eighth inch" is the row of 1/8 in or 3 mm and less, "quarter inch" the row of 1/4 in or 6 mm and more, which has no
 * figure at 20 MPa, and "three sixteenths" everything between.
 *
 * @param points at least one, pressures above 0 and rising, volumes not falling
 */
public record HoseExpansion(List<Point> points) {
    private static final double PSI = 6894.757293168;
    private static final double CC_PER_FOOT = 1e-6 / 0.3048;
    private static final double EIGHTH_INCH = 0.0254 / 8;
    private static final double SIX_MILLIMETRES = 0.006;
    private static final Point UNPRESSED = new Point(0, 0);

    public static final HoseExpansion EIGHTH_INCH_REGULAR = ceiling(0.66, 0.79, 1.21);
    public static final HoseExpansion EIGHTH_INCH_LOW = ceiling(0.33, 0.42, 0.61);
    public static final HoseExpansion THREE_SIXTEENTHS_REGULAR = ceiling(0.86, 1.02, 1.67);
    public static final HoseExpansion THREE_SIXTEENTHS_LOW = ceiling(0.55, 0.72, 0.91);
    public static final HoseExpansion QUARTER_INCH_REGULAR = ceiling(1.04, 1.30);
    public static final HoseExpansion QUARTER_INCH_LOW = ceiling(0.82, 1.17);

    public HoseExpansion {
        points = List.copyOf(points);
        if (points.isEmpty()) {
            throw new IllegalArgumentException("points is []; allowed is at least one point");
        }
        Point before = UNPRESSED;
        for (Point point : points) {
            double pressure = point.pressure();
            double volume = point.volumePerLength();
            Demand.within("pressure", pressure, pressure > before.pressure(), "more than " + before.pressure());
            Demand.within("volumePerLength", volume, volume >= before.volumePerLength(), "not less than before");
            before = point;
        }
    }

    /**
     * One measured or published point.
     *
     * @param pressure Pa
     * @param volumePerLength growth of the bore per free length of hose, m3/m
     */
    public record Point(double pressure, double volumePerLength) {}

    /** A hose that is known at one pressure (Pa) only: volume per length (m3/m) in proportion to pressure. */
    public static HoseExpansion proportional(double pressure, double volumePerLength) {
        return new HoseExpansion(List.of(new Point(pressure, volumePerLength)));
    }

    /**
     * The standard's ceiling for a hose of an inside diameter (m). A diameter between two rows' names belongs to
     * the middle row: interpretation letter 04-009678drn of the agency that keeps the standard.
     */
    public static HoseExpansion ceilingFor(double insideDiameter, boolean lowExpansion) {
        Demand.positive("insideDiameter", insideDiameter);
        if (insideDiameter <= EIGHTH_INCH) {
            return lowExpansion ? EIGHTH_INCH_LOW : EIGHTH_INCH_REGULAR;
        }
        if (insideDiameter >= SIX_MILLIMETRES) {
            return lowExpansion ? QUARTER_INCH_LOW : QUARTER_INCH_REGULAR;
        }
        return lowExpansion ? THREE_SIXTEENTHS_LOW : THREE_SIXTEENTHS_REGULAR;
    }

    /** Growth (m3) of a free length (m) at a pressure (Pa, not negative). */
    public double volume(double length, double pressure) {
        return length * perLength(pressure);
    }

    /** Growth per free length (m3/m) at a pressure (Pa, not negative); above the last point its line goes on. */
    public double perLength(double pressure) {
        Point low = UNPRESSED;
        Point high = points.getFirst();
        for (int i = 1; i < points.size() && pressure > high.pressure(); i++) {
            low = high;
            high = points.get(i);
        }
        double along = (pressure - low.pressure()) / (high.pressure() - low.pressure());
        return low.volumePerLength() + along * (high.volumePerLength() - low.volumePerLength());
    }

    /** Whether a pressure (Pa) lies above the last point, so that the growth is extrapolated. */
    public boolean beyondData(double pressure) {
        return pressure > points.getLast().pressure();
    }

    /** A row of the table: cc per foot at 1000, 1500 and, where given, 2900 psi. */
    private static HoseExpansion ceiling(double... ccPerFoot) {
        double[] psi = {1000, 1500, 2900};
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < ccPerFoot.length; i++) {
            points.add(new Point(psi[i] * PSI, ccPerFoot[i] * CC_PER_FOOT));
        }
        return new HoseExpansion(points);
    }
}
