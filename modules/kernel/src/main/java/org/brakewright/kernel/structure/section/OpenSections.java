package org.brakewright.kernel.structure.section;

import java.util.List;

/**
 * Thin open sections made of flats: angle and channel, corners sharp. Dimensions in m. Loads are taken to pass through
 * the shear center; warping is left out, which lies on the safe side for twist.
 *
 * <p>Source: Roark's Formulas for Stress and Strain (from memory): second moments by parts, torsion b t3/3 by parts.
 */
public final class OpenSections {
    private OpenSections() {}

    /** A rectangle of the section, from its lower corner in the drawing's axes. */
    private record Part(double y, double z, double width, double height) {
        double area() {
            return width * height;
        }

        double middleY() {
            return y + width / 2;
        }

        double middleZ() {
            return z + height / 2;
        }

        double torsion() {
            double t = Math.min(width, height);
            return Math.max(width, height) * t * t * t / 3;
        }
    }

    /**
     * An angle: one leg lies along +y, the other stands along +z from the heel.
     *
     * @param width of the lying leg, heel to toe
     * @param height of the standing leg, heel to toe
     */
    public static Section angle(double width, double height, double thickness) {
        Require.positive("thickness", thickness);
        Require.that(thickness < Math.min(width, height), "thickness", thickness, "must be less than the shorter leg");
        List<Part> parts =
                List.of(new Part(0, 0, width, thickness), new Part(0, thickness, thickness, height - thickness));
        return section(
                parts,
                thickness,
                List.of(
                        new Fibre(0, 0),
                        new Fibre(width, 0),
                        new Fibre(width, thickness),
                        new Fibre(thickness, height),
                        new Fibre(0, height)));
    }

    /**
     * A channel: the web stands along z, both flanges reach towards +y.
     *
     * @param width of the flanges, back of the web to toe
     * @param height over both flanges
     */
    public static Section channel(double width, double height, double thickness) {
        Require.positive("thickness", thickness);
        Require.that(thickness < width, "thickness", thickness, "must be less than the flange");
        Require.that(2 * thickness < height, "thickness", thickness, "must be less than half the height");
        double inner = height - 2 * thickness;
        List<Part> parts = List.of(
                new Part(0, 0, width, thickness),
                new Part(0, thickness, thickness, inner),
                new Part(0, height - thickness, width, thickness));
        return section(
                parts,
                thickness,
                List.of(new Fibre(0, 0), new Fibre(width, 0), new Fibre(width, height), new Fibre(0, height)));
    }

    private static Section section(List<Part> parts, double thickness, List<Fibre> outline) {
        double area = parts.stream().mapToDouble(Part::area).sum();
        double y = parts.stream().mapToDouble(p -> p.area() * p.middleY()).sum() / area;
        double z = parts.stream().mapToDouble(p -> p.area() * p.middleZ()).sum() / area;
        double torsion = parts.stream().mapToDouble(Part::torsion).sum();
        List<Fibre> fibres =
                outline.stream().map(f -> new Fibre(f.y() - y, f.z() - z)).toList();
        return new Section(area, bending(parts, y, z), torsion, torsion / thickness, fibres);
    }

    private static SecondMoments bending(List<Part> parts, double y, double z) {
        double aboutY = 0;
        double aboutZ = 0;
        double product = 0;
        for (Part part : parts) {
            double dy = part.middleY() - y;
            double dz = part.middleZ() - z;
            aboutY += part.area() * (part.height() * part.height() / 12 + dz * dz);
            aboutZ += part.area() * (part.width() * part.width() / 12 + dy * dy);
            product += part.area() * dy * dz;
        }
        return new SecondMoments(aboutY, aboutZ, product);
    }
}
