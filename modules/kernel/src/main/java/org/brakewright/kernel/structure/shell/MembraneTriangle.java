package org.brakewright.kernel.structure.shell;

/**
 * A sheet stretched in its plane, with drilling freedoms: the optimal triangle of the assumed natural deviatoric strain
 * family, which bends exactly in its plane at any aspect ratio. Freedoms at each corner: displacement x, displacement
 * y, rotation about the normal.
 *
 * <p>Source: C. A. Felippa, A study of optimal membrane triangles with drilling freedoms, Computer Methods in Applied
 * Mechanics and Engineering 192 (2003), pp. 2125-2168 (from memory; held by patch test and by the bending test of that
 * paper).
 */
final class MembraneTriangle {
    private static final double ALPHA = 1.5;

    /** The nine free numbers of the deviatoric strain pattern, by rows for corner 1; the other corners by turning. */
    private static final double[][] PATTERN = {
        {1, 2, 1, 0, 1, -1, -1, -1, -2},
        {-2, -1, -1, 1, 1, 2, -1, 0, 1},
        {1, -1, 0, -1, -2, -1, 2, 1, 1}
    };

    private final LocalTriangle triangle;
    private final double deviatoric;

    MembraneTriangle(LocalTriangle triangle, Sheet sheet) {
        this.triangle = triangle;
        this.deviatoric = 0.75 * Math.max((1 - 4 * sheet.poisson() * sheet.poisson()) / 2, 0.01);
    }

    /** 9 x 9 by rows, N/m and N m. */
    double[] stiffness(Sheet sheet) {
        double[] elasticity = sheet.planeStress();
        double[] sum = new double[81];
        double volume = triangle.area() * sheet.thickness();
        Dense.addCongruent(sum, volume, meanStrain(), elasticity);
        for (int corner = 0; corner < 3; corner++) {
            double[] middle = Dense.mean(deviatoricStrain(corner), deviatoricStrain((corner + 1) % 3));
            Dense.addCongruent(sum, deviatoric * volume, middle, elasticity);
        }
        return sum;
    }

    /** Strain at a corner from the nine freedoms, 3 x 9 by rows: mean plus deviatoric part. */
    double[] strainAtCorner(int corner) {
        double[] strain = meanStrain();
        double[] more = deviatoricStrain(corner);
        for (int i = 0; i < strain.length; i++) {
            strain[i] += Math.sqrt(3 * deviatoric) * more[i];
        }
        return strain;
    }

    /** Strain at the center from the nine freedoms, 3 x 9 by rows. */
    double[] meanStrain() {
        double[] b = new double[27];
        double scale = 1 / (2 * triangle.area());
        for (int corner = 0; corner < 3; corner++) {
            int next = (corner + 1) % 3;
            int last = (corner + 2) % 3;
            double y = triangle.dy(next, last);
            double x = triangle.dx(last, next);
            double yLast = triangle.dy(corner, last);
            double yNext = triangle.dy(next, corner);
            double xLast = triangle.dx(last, corner);
            double xNext = triangle.dx(corner, next);
            int column = 3 * corner;
            b[column] = scale * y;
            b[10 + column] = scale * x;
            b[18 + column] = scale * x;
            b[19 + column] = scale * y;
            b[column + 2] = scale * ALPHA / 6 * y * (yLast - yNext);
            b[9 + column + 2] = scale * ALPHA / 6 * x * (xLast - xNext);
            b[18 + column + 2] = scale * ALPHA / 3 * (xLast * yLast - xNext * yNext);
        }
        return b;
    }

    private double[] deviatoricStrain(int corner) {
        double[] natural = Dense.times(pattern(corner), hierarchicalRotations(), 3);
        return Dense.times(fromNatural(), natural, 3);
    }

    /** Rotations of the corners over the rotation of the triangle as a whole, 3 x 9. */
    private double[] hierarchicalRotations() {
        double[] t = new double[27];
        double scale = 1 / (4 * triangle.area());
        for (int row = 0; row < 3; row++) {
            for (int corner = 0; corner < 3; corner++) {
                int next = (corner + 1) % 3;
                int last = (corner + 2) % 3;
                t[9 * row + 3 * corner] = scale * triangle.dx(last, next);
                t[9 * row + 3 * corner + 1] = scale * triangle.dy(last, next);
            }
            t[9 * row + 3 * row + 2] = 1;
        }
        return t;
    }

    /** Cartesian strain from the strains along the sides 1-2, 2-3 and 3-1, 3 x 3. */
    private double[] fromNatural() {
        double[] t = new double[9];
        double area = triangle.area();
        double scale = 1 / (4 * area * area);
        for (int side = 0; side < 3; side++) {
            int i = side;
            int j = (side + 1) % 3;
            int k = (side + 2) % 3;
            double square = squareOfSide(side);
            t[side] = scale * triangle.dy(j, k) * triangle.dy(i, k) * square;
            t[3 + side] = scale * triangle.dx(j, k) * triangle.dx(i, k) * square;
            t[6 + side] =
                    scale * (triangle.dy(j, k) * triangle.dx(k, i) + triangle.dx(k, j) * triangle.dy(i, k)) * square;
        }
        return t;
    }

    private double[] pattern(int corner) {
        double[] q = new double[9];
        for (int side = 0; side < 3; side++) {
            for (int column = 0; column < 3; column++) {
                double scale = 2 * triangle.area() / (3 * squareOfSide(side));
                q[3 * side + column] = scale * PATTERN[corner][3 * side + column];
            }
        }
        return q;
    }

    private double squareOfSide(int side) {
        double x = triangle.dx((side + 1) % 3, side);
        double y = triangle.dy((side + 1) % 3, side);
        return x * x + y * y;
    }
}
