package org.brakewright.kernel.structure.section;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Sections with one outline: round bar and tube, flat, rectangular tube. Corners are sharp. Dimensions in m; width
 * along y, height along z.
 *
 * <p>Sources: Roark's Formulas for Stress and Strain, tables of plane areas and of torsion (from memory).
 */
public final class Sections {
    /** Points on a round outline: the direction of the bending moment is then missed by at most 0.14 %. */
    private static final int ROUND_POINTS = 60;

    private Sections() {}

    public static Section roundBar(double diameter) {
        return round(diameter, 0);
    }

    public static Section roundTube(double diameter, double wall) {
        Require.positive("wall", wall);
        Require.that(2 * wall < diameter, "wall", wall, "must be less than half the diameter");
        return round(diameter, diameter - 2 * wall);
    }

    private static Section round(double outer, double inner) {
        Require.positive("diameter", outer);
        double second = Math.PI / 64 * (Math.pow(outer, 4) - Math.pow(inner, 4));
        List<Fibre> fibres = IntStream.range(0, ROUND_POINTS)
                .mapToObj(i -> 2 * Math.PI * i / ROUND_POINTS)
                .map(angle -> new Fibre(outer / 2 * Math.cos(angle), outer / 2 * Math.sin(angle)))
                .toList();
        double area = Math.PI / 4 * (outer * outer - inner * inner);
        return new Section(area, new SecondMoments(second, second, 0), 2 * second, 4 * second / outer, fibres);
    }

    /** A solid rectangle. */
    public static Section flat(double width, double height) {
        Require.positive("width", width);
        Require.positive("height", height);
        SecondMoments bending = new SecondMoments(width * cube(height) / 12, height * cube(width) / 12, 0);
        double a = Math.max(width, height);
        double b = Math.min(width, height);
        double s = b / a;
        double constant = a * cube(b) * (1.0 / 3 - 0.21 * s * (1 - Math.pow(s, 4) / 12));
        double peak = 1 + s * (0.6095 + s * (0.8865 + s * (-1.8023 + s * 0.9100)));
        return new Section(width * height, bending, constant, a * b * b / (3 * peak), corners(width, height));
    }

    public static Section squareTube(double width, double wall) {
        return rectangularTube(width, width, wall);
    }

    /** A closed rectangular tube; torsion by the area inside the middle of the wall (Bredt). */
    public static Section rectangularTube(double width, double height, double wall) {
        Require.positive("wall", wall);
        Require.that(2 * wall < Math.min(width, height), "wall", wall, "must be less than half the lesser side");
        double w = width - 2 * wall;
        double h = height - 2 * wall;
        SecondMoments bending = new SecondMoments(
                (width * cube(height) - w * cube(h)) / 12, (height * cube(width) - h * cube(w)) / 12, 0);
        double enclosed = (width - wall) * (height - wall);
        double girth = 2 * (width + height - 2 * wall);
        double constant = 4 * enclosed * enclosed * wall / girth;
        return new Section(width * height - w * h, bending, constant, 2 * enclosed * wall, corners(width, height));
    }

    private static List<Fibre> corners(double width, double height) {
        double y = width / 2;
        double z = height / 2;
        return List.of(new Fibre(y, z), new Fibre(-y, z), new Fibre(-y, -z), new Fibre(y, -z));
    }

    private static double cube(double x) {
        return x * x * x;
    }
}
