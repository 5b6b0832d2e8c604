package org.amberyard.core.whatif;

import java.util.Arrays;
import org.amberyard.core.math.Checks;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Results as quadratic functions of inputs, or simpler ones, fitted to some evaluations by least squares: the cheap stand-in for a costly function
 * (response surface; Box and Wilson, "On the experimental attainment of optimum conditions", Journal of the Royal Statistical
 * Society B 13 (1951), 1–45, from memory). How far it misses is told by evaluations that it was not fitted to. The square of an
 * input that takes two values only cannot be told from the input itself, so it has none; an input that takes one value has no term
 * at all.
 */
public final class QuadraticSurface {
    private static final double SINGULAR = 1e-9;

    private final SurfaceTerms terms;
    private final double[][] coefficients;

    private QuadraticSurface(SurfaceTerms terms, double[][] coefficients) {
        this.terms = terms;
        this.coefficients = coefficients;
    }

    /**
     * Fits surfaces.
     *
     * @param inputs by evaluation and input
     * @param results by result and evaluation
     * @param shape which terms they have
     * @throws IllegalArgumentException when there are not more evaluations than coefficients
     * @throws org.apache.commons.math3.linear.SingularMatrixException when inputs move together, so that nothing tells them apart
     */
    public static QuadraticSurface of(double[][] inputs, double[][] results, SurfaceShape shape) {
        Checks.above("Number of evaluations", inputs.length, shape.terms());
        SurfaceTerms terms = SurfaceTerms.of(inputs, shape);
        RealMatrix design = new Array2DRowRealMatrix(Arrays.stream(inputs).map(terms::at).toArray(double[][]::new), false);
        RealMatrix solved = new QRDecomposition(design, SINGULAR).getSolver().solve(new Array2DRowRealMatrix(results, false).transpose());
        return new QuadraticSurface(terms, solved.transpose().getData());
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
}
