package org.brakewright.kernel.structure.sparse;

import java.util.Arrays;
import org.ejml.data.DMatrixSparseCSC;

/** Gathers the upper triangle of a symmetric matrix entry by entry; entries of the same place add up. */
public final class SymmetricMatrix {
    private final int size;
    private int[] rows;
    private int[] columns;
    private double[] values;
    private int count;

    /**
     * @param size unknowns
     * @param expected how many entries will come; more are taken too
     */
    public SymmetricMatrix(int size, int expected) {
        this.size = size;
        int room = Math.max(expected, 16);
        rows = new int[room];
        columns = new int[room];
        values = new double[room];
    }

    /** Adds to the entry at one place and, by symmetry, at its mirror; call it once for the two. */
    public void add(int row, int column, double value) {
        if (count == rows.length) {
            grow();
        }
        rows[count] = Math.min(row, column);
        columns[count] = Math.max(row, column);
        values[count++] = value;
    }

    private void grow() {
        rows = Arrays.copyOf(rows, 2 * count);
        columns = Arrays.copyOf(columns, 2 * count);
        values = Arrays.copyOf(values, 2 * count);
    }

    public int size() {
        return size;
    }

    /** The upper triangle by columns, places merged. */
    DMatrixSparseCSC upper() {
        int[] start = new int[size + 1];
        for (int i = 0; i < count; i++) {
            start[columns[i] + 1]++;
        }
        for (int column = 0; column < size; column++) {
            start[column + 1] += start[column];
        }
        int[] byColumn = new int[count];
        int[] next = start.clone();
        for (int i = 0; i < count; i++) {
            byColumn[next[columns[i]]++] = i;
        }
        return merged(start, byColumn);
    }

    private DMatrixSparseCSC merged(int[] start, int[] byColumn) {
        DMatrixSparseCSC matrix = new DMatrixSparseCSC(size, size, count);
        int[] place = new int[size];
        Arrays.fill(place, -1);
        int used = 0;
        for (int column = 0; column < size; column++) {
            int first = used;
            for (int k = start[column]; k < start[column + 1]; k++) {
                int row = rows[byColumn[k]];
                if (place[row] < first) {
                    place[row] = used;
                    matrix.nz_rows[used] = row;
                    matrix.nz_values[used++] = 0;
                }
                matrix.nz_values[place[row]] += values[byColumn[k]];
            }
            matrix.col_idx[column + 1] = used;
        }
        matrix.nz_length = used;
        matrix.indicesSorted = false;
        return matrix;
    }
}
