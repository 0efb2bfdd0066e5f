package org.brakewright.kernel.structure.shell;

/**
 * A thin plate bent out of its plane: the discrete-Kirchhoff triangle. Freedoms at each corner: deflection, rotation
 * about x, rotation about y.
 *
 * <p>Maintainer's notes. The rotations of the normal run quadratically over six points; at the middle of a side the one
 * along the side follows from the cubic deflection of the side, the one across it is the mean of the ends. The bending
 * strain is then linear, and three points at the middles of the sides integrate its energy exactly.
 *
 * <p>Source: J.-L. Batoz, K.-J. Bathe, L.-W. Ho, A study of three-node triangular plate bending elements, International
 * Journal for Numerical Methods in Engineering 15 (1980), pp. 1771-1812 (from memory; held by patch test).
 */
final class PlateTriangle {
    private static final double[][] MIDDLES = {{0.5, 0.5, 0}, {0, 0.5, 0.5}, {0.5, 0, 0.5}};

    private final LocalTriangle triangle;

    /** Rotations of the normal, towards x then towards y, at the corners and the middles of the sides; 12 x 9. */
    private final double[] normals;

    PlateTriangle(LocalTriangle triangle) {
        this.triangle = triangle;
        this.normals = normals();
    }

    /** 9 x 9 by rows, N/m and N m. */
    double[] stiffness(Sheet sheet) {
        double[] sum = new double[81];
        double[] elasticity = sheet.planeStress();
        double weight = triangle.area() / 3 * Math.pow(sheet.thickness(), 3) / 12;
        for (double[] middle : MIDDLES) {
            Dense.addCongruent(sum, weight, curvature(middle), elasticity);
        }
        return sum;
    }

    /**
     * Strain per distance above the middle of the sheet, from the nine freedoms: 3 x 9 by rows, 1/m.
     *
     * @param at the point as area coordinates
     */
    double[] curvature(double[] at) {
        double[] b = new double[27];
        double[] slopeX = slopes(at, true);
        double[] slopeY = slopes(at, false);
        for (int point = 0; point < 6; point++) {
            for (int freedom = 0; freedom < 9; freedom++) {
                double towardsX = normals[18 * point + freedom];
                double towardsY = normals[18 * point + 9 + freedom];
                b[freedom] += slopeX[point] * towardsX;
                b[9 + freedom] += slopeY[point] * towardsY;
                b[18 + freedom] += slopeY[point] * towardsX + slopeX[point] * towardsY;
            }
        }
        return b;
    }

    /** How the six quadratic shapes rise along x or y. */
    private double[] slopes(double[] at, boolean alongX) {
        double[] rise = new double[3];
        for (int corner = 0; corner < 3; corner++) {
            int next = (corner + 1) % 3;
            int last = (corner + 2) % 3;
            double side = alongX ? triangle.dy(next, last) : triangle.dx(last, next);
            rise[corner] = side / (2 * triangle.area());
        }
        double[] slopes = new double[6];
        for (int corner = 0; corner < 3; corner++) {
            int next = (corner + 1) % 3;
            slopes[corner] = (4 * at[corner] - 1) * rise[corner];
            slopes[3 + corner] = 4 * (at[corner] * rise[next] + at[next] * rise[corner]);
        }
        return slopes;
    }

    private double[] normals() {
        double[] g = new double[108];
        for (int corner = 0; corner < 3; corner++) {
            g[18 * corner + 3 * corner + 2] = 1;
            g[18 * corner + 9 + 3 * corner + 1] = -1;
            middle(g, corner);
        }
        return g;
    }

    private void middle(double[] g, int corner) {
        int next = (corner + 1) % 3;
        double x = triangle.dx(next, corner);
        double y = triangle.dy(next, corner);
        double length = Math.hypot(x, y);
        double c = x / length;
        double s = y / length;
        double step = 1.5 / length;
        int row = 18 * (3 + corner);
        g[row + 3 * corner] = c * step;
        g[row + 3 * next] = -c * step;
        g[row + 9 + 3 * corner] = s * step;
        g[row + 9 + 3 * next] = -s * step;
        for (int end : new int[] {corner, next}) {
            int about = row + 3 * end;
            g[about + 1] = 0.75 * c * s;
            g[about + 2] = -0.25 * c * c + 0.5 * s * s;
            g[about + 9 + 1] = 0.25 * s * s - 0.5 * c * c;
            g[about + 9 + 2] = -0.75 * s * c;
        }
    }
}
