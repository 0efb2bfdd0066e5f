package org.brakewright.kernel.structure;

import java.util.Set;
import org.brakewright.kernel.structure.section.SecondMoments;

/**
 * Stiffness of a slender beam in its own axes, and the end forces that hold it under an even load; what an end does
 * not pass on is eliminated.
 *
 * <p>Source: D. L. Logan, A First Course in the Finite Element Method, chapter 5 (from memory), with the product of
 * area added.
 */
final class BeamStiffness {
    private static final int[] BEND_Y = {1, 5, 7, 11};
    private static final int[] BEND_Z = {2, 4, 8, 10};
    private static final int[] SAME = {1, 1, 1, 1};
    private static final int[] TURNED = {1, -1, 1, -1};

    /** What is left of a stiffness, over what it was, when only rounding is left. */
    private static final double ROUNDING = 1e-11;

    private final double[] matrix = new double[144];
    private final double[] ends = new double[12];

    private BeamStiffness() {}

    /**
     * Of one beam.
     *
     * @param load along its axes, N/m
     */
    static BeamStiffness of(Beam beam, double length, Vector3 load) {
        BeamStiffness work = new BeamStiffness();
        work.stretchAndTwist(beam.property(), length);
        work.bend(beam.property(), length);
        work.hold(length, load);
        double[] full = work.matrix.clone();
        work.release(beam.start().released(), 0, full);
        work.release(beam.end().released(), 6, full);
        work.dropRounding(full);
        return work;
    }

    /** 12 x 12 by rows; N/m, N, N m. */
    double[] matrix() {
        return matrix.clone();
    }

    /** What the load asks of the nodes, as forces on the nodes; N, N m. */
    double[] nodeForces() {
        return ends.clone();
    }

    private void stretchAndTwist(BeamProperty property, double length) {
        pair(0, property.young() * property.section().area() / length);
        pair(3, property.shear() * property.section().torsionConstant() / length);
    }

    private void pair(int at, double rate) {
        matrix[13 * at] = rate;
        matrix[13 * (at + 6)] = rate;
        matrix[12 * at + at + 6] = -rate;
        matrix[12 * (at + 6) + at] = -rate;
    }

    private void bend(BeamProperty property, double length) {
        SecondMoments second = property.section().bending();
        double[] shape = bendingShape(length);
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 4; j++) {
                double base = property.young() * shape[4 * i + j];
                matrix[12 * BEND_Y[i] + BEND_Y[j]] += base * second.z();
                matrix[12 * BEND_Z[i] + BEND_Z[j]] += base * second.y() * TURNED[i] * TURNED[j];
                matrix[12 * BEND_Y[i] + BEND_Z[j]] += base * second.product() * TURNED[j];
                matrix[12 * BEND_Z[i] + BEND_Y[j]] += base * second.product() * TURNED[i];
            }
        }
    }

    private static double[] bendingShape(double length) {
        double a = 12 / (length * length * length);
        double b = 6 / (length * length);
        double c = 4 / length;
        double d = 2 / length;
        return new double[] {a, b, -a, b, b, c, -b, d, -a, -b, a, -b, b, d, -b, c};
    }

    private void hold(double length, Vector3 load) {
        ends[0] = load.x() * length / 2;
        ends[6] = load.x() * length / 2;
        spread(BEND_Y, SAME, load.y(), length);
        spread(BEND_Z, TURNED, load.z(), length);
    }

    private void spread(int[] places, int[] signs, double load, double length) {
        double force = load * length / 2;
        double moment = load * length * length / 12;
        ends[places[0]] += force;
        ends[places[1]] += signs[1] * moment;
        ends[places[2]] += force;
        ends[places[3]] -= signs[3] * moment;
    }

    private void release(Set<Freedom> released, int start, double[] full) {
        for (Freedom freedom : Freedom.values()) {
            if (released.contains(freedom)) {
                int gone = start + freedom.index();
                eliminate(gone, ROUNDING * full[13 * gone]);
            }
        }
    }

    private void eliminate(int gone, double nothing) {
        double pivot = matrix[13 * gone];
        if (pivot > nothing) {
            for (int i = 0; i < 12; i++) {
                double share = matrix[12 * i + gone] / pivot;
                if (i != gone) {
                    ends[i] -= share * ends[gone];
                    subtract(i, gone, share);
                }
            }
        }
        ends[gone] = 0;
        for (int i = 0; i < 12; i++) {
            matrix[12 * i + gone] = 0;
            matrix[12 * gone + i] = 0;
        }
    }

    private void subtract(int row, int gone, double share) {
        for (int j = 0; j < 12; j++) {
            matrix[12 * row + j] -= share * matrix[12 * gone + j];
        }
    }

    /** A freedom that nothing holds any more must hold exactly nothing, so that it can be told from a soft one. */
    private void dropRounding(double[] full) {
        for (int i = 0; i < 12; i++) {
            for (int j = 0; j < 12; j++) {
                double scale = Math.sqrt(full[13 * i] * full[13 * j]);
                if (Math.abs(matrix[12 * i + j]) < ROUNDING * scale) {
                    matrix[12 * i + j] = 0;
                }
            }
        }
    }
}
