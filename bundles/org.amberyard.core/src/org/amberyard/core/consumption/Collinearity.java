package org.amberyard.core.consumption;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.SingularValueDecomposition;

/**
 * How alike the columns of a regression are, by its condition index: the ratio of the largest to the smallest singular value
 * of the columns scaled to equal length. Belsley, Kuh and Welsch, "Regression Diagnostics", 1980, chapter 3 (from memory).
 */
final class Collinearity {
    /** Above this, terms cannot be told apart; Belsley, Kuh and Welsch call it moderate to strong (from memory). */
    static final double LARGEST_INDEX = 30;

    private Collinearity() {
    }

    /** The condition index of columns that are not zero; infinite when one is a mixture of the others. */
    static double conditionIndex(double[][] columns) {
        RealMatrix matrix = new Array2DRowRealMatrix(columns[0].length, columns.length);
        for (int c = 0; c < columns.length; c++) {
            matrix.setColumnVector(c, new ArrayRealVector(columns[c]).unitVector());
        }
        return new SingularValueDecomposition(matrix).getConditionNumber();
    }
}
