package org.amberyard.core.trace;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;

/**
 * A cubic fitted by least squares to the figures around a moment; its value and its slope there are the smoothed figure and
 * its rate (local regression after A. Savitzky and M. J. E. Golay, "Smoothing and Differentiation of Data by Simplified
 * Least Squares Procedures", Analytical Chemistry 36, 1964, from memory, here for times at any distance).
 *
 * <p>A cubic follows accelerating and braking, which a straight line over the same window would blunt. Near the ends, where
 * figures stand on one side only, a straight line is fitted, because a cubic would run wild.
 */
final class LocalFit {
    private static final int CUBIC = 4;
    private static final int LINE = 2;

    private final double[] timeS;
    private final double[] figure;
    private final double halfWidthS;

    /**
     * @param timeS times, rising strictly
     * @param figure figure at each time
     * @param halfWidthS how far the window reaches to either side, s
     */
    LocalFit(double[] timeS, double[] figure, double halfWidthS) {
        this.timeS = timeS;
        this.figure = figure;
        this.halfWidthS = halfWidthS;
    }

    /** Value and slope at a point. */
    record Result(double value, double slope) {
    }

    Result at(int point) {
        int from = point;
        int to = point;
        while (from > 0 && timeS[point] - timeS[from - 1] <= halfWidthS) {
            from--;
        }
        while (to < timeS.length - 1 && timeS[to + 1] - timeS[point] <= halfWidthS) {
            to++;
        }
        int terms = Math.min(point - from, to - point) >= (to - from + 1) / 4 ? CUBIC : LINE;
        return fit(point, from, to, Math.min(terms, to - from + 1));
    }

    /** Normal equations in the time over the half width, which keeps them well conditioned. */
    private Result fit(int point, int from, int to, int terms) {
        double[] powers = new double[2 * terms - 1];
        double[] moments = new double[terms];
        for (int i = from; i <= to; i++) {
            double x = (timeS[i] - timeS[point]) / halfWidthS;
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
        return new Result(figure[point] + coefficients[0], terms > 1 ? coefficients[1] / halfWidthS : 0);
    }

    private static double[] solve(double[] powers, double[] moments) {
        double[][] matrix = new double[moments.length][moments.length];
        for (int row = 0; row < matrix.length; row++) {
            System.arraycopy(powers, row, matrix[row], 0, matrix.length);
        }
        return new LUDecomposition(new Array2DRowRealMatrix(matrix, false)).getSolver()
                .solve(new ArrayRealVector(moments, false)).toArray();
    }
}
