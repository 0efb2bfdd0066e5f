package org.brakewright.kernel.structure.shell;

/**
 * A flat triangle of a thin shell: membrane and bending side by side. Freedoms at each corner, in the triangle's axes:
 * three displacements, three rotations.
 */
public final class ShellTriangle {
    private static final int[] IN_PLANE = {0, 1, 5, 6, 7, 11, 12, 13, 17};
    private static final int[] ACROSS = {2, 3, 4, 8, 9, 10, 14, 15, 16};
    private static final double[][] CORNERS = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
    private static final double[] CENTER = {1.0 / 3, 1.0 / 3, 1.0 / 3};

    private final Sheet sheet;
    private final MembraneTriangle membrane;
    private final PlateTriangle plate;

    public ShellTriangle(LocalTriangle triangle, Sheet sheet) {
        this.sheet = sheet;
        this.membrane = new MembraneTriangle(triangle, sheet);
        this.plate = new PlateTriangle(triangle);
    }

    /** 18 x 18 by rows; N/m, N, N m. */
    public double[] stiffness() {
        double[] k = new double[324];
        spread(membrane.stiffness(sheet), IN_PLANE, k);
        spread(plate.stiffness(sheet), ACROSS, k);
        return k;
    }

    private static void spread(double[] part, int[] places, double[] whole) {
        for (int i = 0; i < 9; i++) {
            for (int j = 0; j < 9; j++) {
                whole[18 * places[i] + places[j]] = part[9 * i + j];
            }
        }
    }

    /** Stress at the center. */
    public SheetStress atCenter(double[] freedoms) {
        return stress(membrane.meanStrain(), plate.curvature(CENTER), freedoms);
    }

    /**
     * Stress at a corner.
     *
     * @param corner 0, 1 or 2
     */
    public SheetStress atCorner(int corner, double[] freedoms) {
        return stress(membrane.strainAtCorner(corner), plate.curvature(CORNERS[corner]), freedoms);
    }

    private SheetStress stress(double[] strain, double[] curvature, double[] freedoms) {
        double[] elasticity = sheet.planeStress();
        double[] stretch = Dense.times(elasticity, Dense.times(strain, picked(freedoms, IN_PLANE), 9), 3);
        double[] bend = Dense.times(elasticity, Dense.times(curvature, picked(freedoms, ACROSS), 9), 3);
        double half = sheet.thickness() / 2;
        return new SheetStress(
                new PlaneStress(stretch[0], stretch[1], stretch[2]),
                new PlaneStress(half * bend[0], half * bend[1], half * bend[2]));
    }

    private static double[] picked(double[] freedoms, int[] places) {
        double[] picked = new double[9];
        for (int i = 0; i < 9; i++) {
            picked[i] = freedoms[places[i]];
        }
        return picked;
    }
}
