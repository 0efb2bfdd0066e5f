package org.brakewright.kernel.hydraulics;

/** Area of a round piston or passage. */
public final class Bore {
    private Bore() {}

    /** Area (m2) of a circle of the given diameter (m). */
    public static double area(double diameter) {
        return Math.PI / 4 * diameter * diameter;
    }

    /** Diameter (m) of the circle with the given area (m2). */
    public static double diameter(double area) {
        return Math.sqrt(4 * area / Math.PI);
    }
}
