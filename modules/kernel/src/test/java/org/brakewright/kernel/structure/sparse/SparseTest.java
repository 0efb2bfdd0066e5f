package org.brakewright.kernel.structure.sparse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SparseTest {
    /** A string of n beads, stiffness 2 on the diagonal and -1 beside it. */
    private static SymmetricMatrix string(int n) {
        SymmetricMatrix matrix = new SymmetricMatrix(n, 0);
        for (int i = 0; i < n; i++) {
            // entries of one place add up
            matrix.add(i, i, 0.5);
            matrix.add(i, i, 1.5);
            if (i > 0) {
                matrix.add(i, i - 1, -1);
            }
        }
        return matrix;
    }

    /** Under even load the string takes the parabola x_i = i (n + 1 - i)/2, exactly. */
    @Test
    void stringUnderEvenLoad() {
        int n = 50;
        double[] load = new double[n];
        Arrays.fill(load, 1);
        double[] x = CholeskyFactor.of(string(n)).orElseThrow().solve(load);
        for (int i = 1; i <= n; i++) {
            assertThat(x[i - 1]).isCloseTo(i * (n + 1 - i) / 2.0, within(1e-9));
        }
    }

    /** Pivots of the string are (i + 1)/i: the last keeps (n + 1)/n of 2. */
    @Test
    void leastPivotOfTheString() {
        assertThat(CholeskyFactor.of(string(4)).orElseThrow().leastPivot()).isCloseTo(1.25 / 2, within(1e-12));
    }

    @Test
    void whatIsNotPositiveDefiniteIsNotFactored() {
        SymmetricMatrix saddle = new SymmetricMatrix(2, 3);
        saddle.add(0, 0, 1);
        saddle.add(0, 1, 2);
        saddle.add(1, 1, 1);
        assertThat(CholeskyFactor.of(saddle)).isEmpty();
    }

    private static int[][] cellsOfSquare(int side) {
        return IntStream.range(0, (side - 1) * (side - 1))
                .mapToObj(cell -> {
                    int at = cell / (side - 1) * side + cell % (side - 1);
                    return new int[] {at, at + 1, at + side, at + side + 1};
                })
                .toArray(int[][]::new);
    }

    @Test
    void anOrderNamesEveryVertexOnce() {
        int[] order = MinimumDegree.order(Graph.ofCliques(30 * 30 + 1, cellsOfSquare(30)));
        assertThat(Arrays.stream(order).sorted().toArray())
                .containsExactly(IntStream.rangeClosed(0, 900).toArray());
    }

    /** A star is eliminated from its points, which makes no new entry; the hub goes with the last point. */
    @Test
    void aStarIsEliminatedFromItsPoints() {
        int[][] rays = IntStream.range(1, 9).mapToObj(i -> new int[] {0, i}).toArray(int[][]::new);
        int[] order = MinimumDegree.order(Graph.ofCliques(9, rays));
        assertThat(Arrays.stream(order).limit(7)).doesNotContain(0);
    }

    /** On a square of n vertices bands cost n^1.5 entries, 64 000 here; least degree grows as n log n. */
    @Test
    void theOrderKeepsTheMatrixSparse() {
        int side = 40;
        int[][] cells = cellsOfSquare(side);
        int[] order = MinimumDegree.order(Graph.ofCliques(side * side, cells));
        int[] place = new int[order.length];
        for (int i = 0; i < order.length; i++) {
            place[order[i]] = i;
        }
        int banded = entries(cells, IntStream.range(0, order.length).toArray());
        assertThat(banded).isGreaterThan(60_000);
        assertThat(entries(cells, place)).isLessThan(banded * 2 / 3);
    }

    private static int entries(int[][] cells, int[] place) {
        SymmetricMatrix matrix = new SymmetricMatrix(place.length, 0);
        for (int vertex : place) {
            matrix.add(vertex, vertex, 1);
        }
        for (int[] cell : cells) {
            for (int i = 0; i < 4; i++) {
                for (int j = i; j < 4; j++) {
                    matrix.add(place[cell[i]], place[cell[j]], i == j ? 3 : -1);
                }
            }
        }
        return CholeskyFactor.of(matrix).orElseThrow().entries();
    }
}
