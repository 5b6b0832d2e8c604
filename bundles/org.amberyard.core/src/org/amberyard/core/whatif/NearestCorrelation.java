package org.amberyard.core.whatif;

import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * The correlation matrix nearest to a symmetric matrix with ones on its diagonal, by the sum of squares of the changes:
 * alternating projections of Higham, "Computing the nearest correlation matrix, a problem from finance", IMA Journal of
 * Numerical Analysis 22 (2002), 329–343 (from memory).
 */
final class NearestCorrelation {
    private static final int MOST_STEPS = 500;
    private static final double CLOSE = 1e-9;

    private NearestCorrelation() {
    }

    /** The nearest, with eigenvalues of 0 or more to within rounding. */
    static RealMatrix of(RealMatrix wanted) {
        RealMatrix correction = wanted.scalarMultiply(0);
        RealMatrix unit = wanted;
        for (int step = 0; step < MOST_STEPS; step++) {
            RealMatrix corrected = unit.subtract(correction);
            RealMatrix positive = withoutNegativeParts(corrected);
            correction = positive.subtract(corrected);
            RealMatrix next = withUnitDiagonal(positive);
            double moved = next.subtract(unit).getFrobeniusNorm();
            unit = next;
            if (moved < CLOSE) {
                return unit;
            }
        }
        return unit;
    }

    private static RealMatrix withoutNegativeParts(RealMatrix matrix) {
        EigenDecomposition parts = new EigenDecomposition(matrix);
        double[] values = parts.getRealEigenvalues();
        for (int i = 0; i < values.length; i++) {
            values[i] = Math.max(0, values[i]);
        }
        RealMatrix made = parts.getV().multiply(MatrixUtils.createRealDiagonalMatrix(values)).multiply(parts.getVT());
        return made.add(made.transpose()).scalarMultiply(0.5);
    }

    private static RealMatrix withUnitDiagonal(RealMatrix matrix) {
        RealMatrix copy = matrix.copy();
        for (int i = 0; i < copy.getRowDimension(); i++) {
            copy.setEntry(i, i, 1);
        }
        return copy;
    }
}
