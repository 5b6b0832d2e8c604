package org.amberyard.core.whatif;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.amberyard.core.math.Checks;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Results as quadratic functions of inputs, fitted to some evaluations by least squares: the cheap stand-in for a costly function
 * whose error is known from leaving each evaluation out in turn (response surface; Box and Wilson, "On the experimental
 * attainment of optimum conditions", Journal of the Royal Statistical Society B 13 (1951), 1–45; leaving out by the leverage of
 * each point, both from memory). The square of an input that takes two values only cannot be told from the input itself, so it has
 * none; an input that takes one value has no term at all.
 */
public final class QuadraticSurface {
    private static final double SINGULAR = 1e-9;

    private final SurfaceTerms terms;
    private final double[][] coefficients;
    private final double[][] missed;

    private QuadraticSurface(SurfaceTerms terms, double[][] coefficients, double[][] missed) {
        this.terms = terms;
        this.coefficients = coefficients;
        this.missed = missed;
    }

    /** Number of coefficients for a number of inputs, or more. */
    public static int terms(int inputs) {
        return 1 + inputs + inputs * (inputs + 1) / 2;
    }

    /**
     * Fits surfaces.
     *
     * @param inputs by evaluation and input
     * @param results by result and evaluation
     * @throws IllegalArgumentException when there are not more evaluations than coefficients
     * @throws org.apache.commons.math3.linear.SingularMatrixException when inputs move together, so that nothing tells them apart
     */
    public static QuadraticSurface of(double[][] inputs, double[][] results) {
        Checks.above("Number of evaluations", inputs.length, terms(inputs[0].length));
        SurfaceTerms terms = SurfaceTerms.of(inputs);
        RealMatrix design = new Array2DRowRealMatrix(Arrays.stream(inputs).map(terms::at).toArray(double[][]::new), false);
        QRDecomposition decomposed = new QRDecomposition(design, SINGULAR);
        RealMatrix solved = decomposed.getSolver().solve(new Array2DRowRealMatrix(results, false).transpose());
        return new QuadraticSurface(terms, solved.transpose().getData(), missed(design, decomposed, solved, results));
    }

    /** By result and evaluation: the result less what the surface without that evaluation gives. */
    private static double[][] missed(RealMatrix design, QRDecomposition decomposed, RealMatrix solved, double[][] results) {
        RealMatrix fits = design.multiply(solved);
        RealMatrix basis = decomposed.getQ().getSubMatrix(0, design.getRowDimension() - 1, 0, design.getColumnDimension() - 1);
        double[][] missed = new double[results.length][design.getRowDimension()];
        for (int row = 0; row < design.getRowDimension(); row++) {
            double leverage = Arrays.stream(basis.getRow(row)).map(q -> q * q).sum();
            for (int result = 0; result < results.length; result++) {
                missed[result][row] = (results[result][row] - fits.getEntry(row, result)) / Math.max(SINGULAR, 1 - leverage);
            }
        }
        return missed;
    }

    /** Writes the results at inputs, a place for each. */
    public void at(double[] inputs, double[] results) {
        double[] at = terms.at(inputs);
        for (int result = 0; result < coefficients.length; result++) {
            double sum = 0;
            for (int term = 0; term < at.length; term++) {
                sum += coefficients[result][term] * at[term];
            }
            results[result] = sum;
        }
    }

    /** By how much a result is missed, root mean square over the evaluations, each left out of the fit in turn. */
    public double error(int result) {
        return rootMeanSquare(evaluation -> missed[result][evaluation]);
    }

    /** By how much one result less another is missed, likewise; what both miss alike falls out. */
    public double error(int result, int less) {
        return rootMeanSquare(evaluation -> missed[result][evaluation] - missed[less][evaluation]);
    }

    private double rootMeanSquare(IntToDoubleFunction values) {
        return Math.sqrt(IntStream.range(0, missed[0].length).mapToDouble(values).map(value -> value * value).average().orElseThrow());
    }
}
