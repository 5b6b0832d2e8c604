package org.amberyard.core.consumption;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * The exact least-squares solution without negative coefficients, for a handful of columns: the best of the ordinary
 * solutions of all sets of columns that have no negative coefficient. Lawson and Hanson, "Solving Least Squares Problems",
 * 1974, chapter 23, states the problem (from memory); with four columns there are sixteen sets, so no search is needed.
 */
final class NonNegativeLeastSquares {
    /** Below this share of its length that is not spanned by the others, a column tells nothing of its own. */
    private static final double SINGULAR = 1e-9;

    private final double[][] columns;
    private final RealVector target;

    private NonNegativeLeastSquares(double[][] columns, double[] target) {
        this.columns = columns;
        this.target = new ArrayRealVector(target, false);
    }

    /**
     * A solution.
     *
     * @param coefficients one for each column, none negative
     * @param residualSum sum of squared residuals
     */
    record Solution(double[] coefficients, double residualSum) {
    }

    static Solution solve(double[][] columns, double[] target) {
        return new NonNegativeLeastSquares(columns, target).best();
    }

    private Solution best() {
        Solution best = new Solution(new double[columns.length], target.dotProduct(target));
        for (int set = 1; set < 1 << columns.length; set++) {
            Solution solution = ofSet(set);
            if (solution.residualSum < best.residualSum) {
                best = solution;
            }
        }
        return best;
    }

    /** The ordinary solution of a set of columns; of infinite residual when it is not unique or not allowed. */
    private Solution ofSet(int set) {
        int[] chosen = IntStream.range(0, columns.length).filter(c -> (set >> c & 1) == 1).toArray();
        double[] lengths = Arrays.stream(chosen).mapToDouble(c -> new ArrayRealVector(columns[c], false).getNorm()).toArray();
        RealMatrix matrix = unitColumns(chosen, lengths);
        DecompositionSolver solver = new QRDecomposition(matrix, SINGULAR).getSolver();
        double[] coefficients = new double[columns.length];
        if (!solver.isNonSingular()) {
            return new Solution(coefficients, Double.POSITIVE_INFINITY);
        }
        RealVector scaled = solver.solve(target);
        for (int i = 0; i < chosen.length; i++) {
            coefficients[chosen[i]] = scaled.getEntry(i) / lengths[i];
        }
        RealVector residual = target.subtract(matrix.operate(scaled));
        boolean allowed = scaled.getMinValue() >= 0;
        return new Solution(coefficients, allowed ? residual.dotProduct(residual) : Double.POSITIVE_INFINITY);
    }

    private RealMatrix unitColumns(int[] chosen, double[] lengths) {
        RealMatrix matrix = new Array2DRowRealMatrix(target.getDimension(), chosen.length);
        for (int i = 0; i < chosen.length; i++) {
            double length = lengths[i] > 0 ? lengths[i] : 1;
            matrix.setColumnVector(i, new ArrayRealVector(columns[chosen[i]]).mapDivideToSelf(length));
        }
        return matrix;
    }
}
