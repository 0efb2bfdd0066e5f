package org.brakewright.kernel.structure;

/** Turns and shifts square matrices of freedoms that come in threes: shifts, then turns, of one joint after another. */
final class Blocks {
    private Blocks() {}

    /** From the element's axes to the structure's: R' K R with R by rows for every three freedoms. */
    static double[] turned(double[] matrix, double[] r) {
        int n = (int) Math.round(Math.sqrt(matrix.length));
        double[] half = new double[matrix.length];
        for (int i = 0; i < n; i++) {
            for (int block = 0; block < n; block += 3) {
                int at = n * i + block;
                for (int j = 0; j < 3; j++) {
                    half[at + j] = matrix[at] * r[j] + matrix[at + 1] * r[3 + j] + matrix[at + 2] * r[6 + j];
                }
            }
        }
        double[] whole = new double[matrix.length];
        for (int block = 0; block < n; block += 3) {
            for (int j = 0; j < n; j++) {
                double a = half[n * block + j];
                double b = half[n * (block + 1) + j];
                double c = half[n * (block + 2) + j];
                for (int i = 0; i < 3; i++) {
                    whole[n * (block + i) + j] = r[i] * a + r[3 + i] * b + r[6 + i] * c;
                }
            }
        }
        return whole;
    }

    /** From freedoms at the tip of an arm to those at its root, for the joint that starts at a freedom; in place. */
    static void moveToRoot(double[] matrix, int start, Vector3 arm) {
        int n = (int) Math.round(Math.sqrt(matrix.length));
        for (int i = 0; i < n; i++) {
            addArm(matrix, n * i + start, 1, arm);
        }
        for (int j = 0; j < n; j++) {
            addArm(matrix, n * start + j, n, arm);
        }
    }

    private static void addArm(double[] m, int at, int step, Vector3 arm) {
        double x = m[at];
        double y = m[at + step];
        double z = m[at + 2 * step];
        m[at + 3 * step] += arm.y() * z - arm.z() * y;
        m[at + 4 * step] += arm.z() * x - arm.x() * z;
        m[at + 5 * step] += arm.x() * y - arm.y() * x;
    }
}
