package org.amberyard.core.trace;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;

/**
 * A cubic fitted by least squares to the figures around a moment, or a place; its value and its slope there are the smoothed
 * figure and its rate (local regression after A. Savitzky and M. J. E. Golay, "Smoothing and Differentiation of Data by
 * Simplified Least Squares Procedures", Analytical Chemistry 36, 1964, from memory, here for moments at any distance).
 *
 * <p>A cubic follows accelerating and braking, which a straight line over the same window would blunt. Near the ends, where
 * figures stand on one side only, a straight line is fitted, because a cubic would run wild.
 */
final class LocalFit {
    private static final int CUBIC = 4;
    private static final int LINE = 2;

    private final double[] at;
    private final double[] figure;
    private final double reach;

    /**
     * @param at times in s or places in m, rising strictly
     * @param figure figure at each
     * @param reach how far the window reaches to either side, s or m
     */
    LocalFit(double[] at, double[] figure, double reach) {
        this.at = at;
        this.figure = figure;
        this.reach = reach;
    }

    /** Value and slope at a point. */
    record Result(double value, double slope) {
    }

    Result fit(int point) {
        int from = point;
        int to = point;
        while (from > 0 && at[point] - at[from - 1] <= reach) {
            from--;
        }
        while (to < at.length - 1 && at[to + 1] - at[point] <= reach) {
            to++;
        }
        int terms = Math.min(point - from, to - point) >= (to - from + 1) / 4 ? CUBIC : LINE;
        return from == to ? new Result(figure[point], 0) : fitted(point, from, to, Math.min(terms, to - from + 1));
    }

    /** Normal equations in units of the window, which keeps them well conditioned. */
    private Result fitted(int point, int from, int to, int terms) {
        double unit = Math.max(at[point] - at[from], at[to] - at[point]);
        double[] powers = new double[2 * terms - 1];
        double[] moments = new double[terms];
        for (int i = from; i <= to; i++) {
            double x = (at[i] - at[point]) / unit;
            double power = 1;
            for (int k = 0; k < powers.length; k++) {
                powers[k] += power;
                if (k < terms) {
                    moments[k] += power * (figure[i] - figure[point]);
                }
                power *= x;
            }
        }
        double[] coefficients = solve(powers, moments);
        return new Result(figure[point] + coefficients[0], coefficients[1] / unit);
    }

    private static double[] solve(double[] powers, double[] moments) {
        double[][] matrix = new double[moments.length][moments.length];
        for (int row = 0; row < matrix.length; row++) {
            System.arraycopy(powers, row, matrix[row], 0, matrix.length);
        }
        return new QRDecomposition(new Array2DRowRealMatrix(matrix, false)).getSolver()
                .solve(new ArrayRealVector(moments, false)).toArray();
    }
}
