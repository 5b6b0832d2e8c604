package org.amberyard.core.consumption;

import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.SingularValueDecomposition;

/**
 * How precisely a regression knows its coefficients: covariance from the scatter of the residuals, reach of the 95 % interval
 * by Student's t. Draper and Smith, "Applied Regression Analysis", 3rd ed. 1998, chapters 1 and 5 (from memory).
 */
final class TermPrecision {
    private static final double UPPER_QUANTILE = 0.975;

    private final RealMatrix covariance;
    private final double student;

    /**
     * @param columns columns of the coefficients that are not at a bound
     * @param residualSum sum of squared residuals
     */
    TermPrecision(double[][] columns, double residualSum) {
        RealMatrix matrix = new Array2DRowRealMatrix(columns, false).transpose();
        int freedom = matrix.getRowDimension() - columns.length;
        this.covariance = new SingularValueDecomposition(matrix).getCovariance(0).scalarMultiply(residualSum / freedom);
        this.student = new TDistribution(freedom).inverseCumulativeProbability(UPPER_QUANTILE);
    }

    /** 95 % interval of a coefficient. */
    Interval of(int column, double value) {
        return Interval.around(value, student * Math.sqrt(covariance.getEntry(column, column)));
    }

    /** 95 % interval of one coefficient over another, by first-order propagation of errors. */
    Interval ofRatio(int above, int below, double ratio, double belowValue) {
        double variance = covariance.getEntry(above, above) - 2 * ratio * covariance.getEntry(above, below)
                + ratio * ratio * covariance.getEntry(below, below);
        return Interval.around(ratio, student * Math.sqrt(Math.max(0, variance)) / belowValue);
    }
}
