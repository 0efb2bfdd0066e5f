package org.brakewright.kernel.structure;

import java.util.List;
import org.brakewright.kernel.structure.sparse.SymmetricMatrix;

/** All members of a structure with their stiffnesses, one matrix after another in one column of numbers. */
final class Assembly {
    private final List<Member> members;
    private final int[][] nodes;
    private final int[] start;
    private final double[] matrices;
    private final int freedoms;

    private Assembly(StructureModel model, List<Member> members) {
        this.members = members;
        this.freedoms = 6 * model.nodes().size();
        this.nodes = members.stream().map(Member::nodes).toArray(int[][]::new);
        this.start = new int[nodes.length + 1];
        for (int i = 0; i < nodes.length; i++) {
            int size = 6 * nodes[i].length;
            start[i + 1] = start[i] + size * size;
        }
        this.matrices = new double[start[nodes.length]];
        for (int i = 0; i < nodes.length; i++) {
            double[] matrix = members.get(i).stiffness(model);
            System.arraycopy(matrix, 0, matrices, start[i], matrix.length);
        }
    }

    static Assembly of(StructureModel model, Leaders leaders) {
        return new Assembly(
                model,
                model.elements().stream()
                        .map(element -> Member.of(element, model, leaders))
                        .toList());
    }

    List<Member> members() {
        return members;
    }

    int freedoms() {
        return freedoms;
    }

    /** The leading nodes that each member touches. */
    int[][] nodes() {
        return nodes.clone();
    }

    private int size(int member) {
        return 6 * nodes[member].length;
    }

    private int freedom(int member, int own) {
        return 6 * nodes[member][own / 6] + own % 6;
    }

    /** What resists each freedom when the others are held. */
    double[] diagonal() {
        double[] diagonal = new double[freedoms];
        for (int m = 0; m < nodes.length; m++) {
            int n = size(m);
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    if (freedom(m, i) == freedom(m, j)) {
                        diagonal[freedom(m, i)] += matrices[start[m] + n * i + j];
                    }
                }
            }
        }
        return diagonal;
    }

    /** The matrix of the numbered freedoms, with a share of its own diagonal added. */
    SymmetricMatrix matrix(Equations equations, double stiffening) {
        SymmetricMatrix sum = new SymmetricMatrix(equations.count(), matrices.length / 2 + 9 * nodes.length);
        for (int m = 0; m < nodes.length; m++) {
            addTo(sum, equations, m);
        }
        if (stiffening > 0) {
            double[] diagonal = diagonal();
            for (int freedom = 0; freedom < freedoms; freedom++) {
                int row = equations.of(freedom);
                if (row >= 0) {
                    sum.add(row, row, stiffening * diagonal[freedom]);
                }
            }
        }
        return sum;
    }

    private void addTo(SymmetricMatrix sum, Equations equations, int member) {
        int n = size(member);
        for (int i = 0; i < n; i++) {
            int row = equations.of(freedom(member, i));
            for (int j = row < 0 ? n : i; j < n; j++) {
                int column = equations.of(freedom(member, j));
                double value = matrices[start[member] + n * i + j];
                if (column >= 0 && value != 0) {
                    sum.add(row, column, i != j && row == column ? 2 * value : value);
                }
            }
        }
    }

    /** The forces that hold the nodes when they move as given. */
    double[] times(double[] motion) {
        double[] forces = new double[freedoms];
        for (int m = 0; m < nodes.length; m++) {
            int n = size(m);
            for (int i = 0; i < n; i++) {
                double sum = 0;
                for (int j = 0; j < n; j++) {
                    sum += matrices[start[m] + n * i + j] * motion[freedom(m, j)];
                }
                forces[freedom(m, i)] += sum;
            }
        }
        return forces;
    }
}
