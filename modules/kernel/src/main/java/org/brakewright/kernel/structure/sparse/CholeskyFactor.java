package org.brakewright.kernel.structure.sparse;

import java.util.Optional;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.sparse.csc.decomposition.chol.CholeskyUpLooking_DSCC;
import org.ejml.sparse.csc.misc.TriangularSolver_DSCC;

/** A symmetric matrix split into a triangle times its mirror, ready for any number of right-hand sides. */
public final class CholeskyFactor {
    private final DMatrixSparseCSC lower;
    private final double leastPivot;

    private CholeskyFactor(DMatrixSparseCSC lower, double leastPivot) {
        this.lower = lower;
        this.leastPivot = leastPivot;
    }

    /** Empty when the matrix is not positive definite. */
    public static Optional<CholeskyFactor> of(SymmetricMatrix matrix) {
        DMatrixSparseCSC upper = matrix.upper();
        CholeskyUpLooking_DSCC work = new CholeskyUpLooking_DSCC();
        if (!work.decompose(upper)) {
            return Optional.empty();
        }
        DMatrixSparseCSC lower = work.getL();
        return Optional.of(new CholeskyFactor(lower, leastPivot(upper, lower)));
    }

    /** The least pivot over the diagonal entry it came from: 1 means untouched, near 1e-16 nothing was left of it. */
    public double leastPivot() {
        return leastPivot;
    }

    /** Entries of the triangle, a measure of the work. */
    public int entries() {
        return lower.nz_length;
    }

    /** The unknowns that belong to a right-hand side. */
    public double[] solve(double[] rightHandSide) {
        double[] x = rightHandSide.clone();
        TriangularSolver_DSCC.solveL(lower, x);
        TriangularSolver_DSCC.solveTranL(lower, x);
        return x;
    }

    private static double leastPivot(DMatrixSparseCSC upper, DMatrixSparseCSC lower) {
        double least = 1;
        for (int column = 0; column < upper.numCols; column++) {
            double root = lower.nz_values[lower.col_idx[column]];
            least = Math.min(least, root * root / diagonal(upper, column));
        }
        return least;
    }

    private static double diagonal(DMatrixSparseCSC upper, int column) {
        for (int k = upper.col_idx[column]; k < upper.col_idx[column + 1]; k++) {
            if (upper.nz_rows[k] == column) {
                return upper.nz_values[k];
            }
        }
        return 0;
    }
}
