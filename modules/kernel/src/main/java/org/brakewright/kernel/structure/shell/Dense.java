package org.brakewright.kernel.structure.shell;

/** Small full matrices by rows. */
final class Dense {
    private Dense() {}

    /** Left times right; {@code inner} is the columns of the left. */
    static double[] times(double[] left, double[] right, int inner) {
        int rows = left.length / inner;
        int columns = right.length / inner;
        double[] product = new double[rows * columns];
        for (int i = 0; i < rows; i++) {
            for (int k = 0; k < inner; k++) {
                double factor = left[i * inner + k];
                for (int j = 0; j < columns; j++) {
                    product[i * columns + j] += factor * right[k * columns + j];
                }
            }
        }
        return product;
    }

    /** Adds factor times B' D B, where B has as many rows as the square D. */
    static void addCongruent(double[] sum, double factor, double[] b, double[] d) {
        int rows = (int) Math.round(Math.sqrt(d.length));
        int columns = b.length / rows;
        double[] db = times(d, b, rows);
        for (int k = 0; k < rows; k++) {
            for (int i = 0; i < columns; i++) {
                double weight = factor * b[k * columns + i];
                for (int j = 0; j < columns; j++) {
                    sum[i * columns + j] += weight * db[k * columns + j];
                }
            }
        }
    }

    static double[] mean(double[] one, double[] other) {
        double[] mean = new double[one.length];
        for (int i = 0; i < mean.length; i++) {
            mean[i] = (one[i] + other[i]) / 2;
        }
        return mean;
    }
}
