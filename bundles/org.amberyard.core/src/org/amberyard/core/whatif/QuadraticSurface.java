package org.amberyard.core.whatif;

import java.util.Arrays;
import org.amberyard.core.math.Checks;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Results as quadratic functions of inputs, fitted to some evaluations by least squares: the cheap stand-in for a costly function
 * whose error is known from leaving each evaluation out in turn (response surface; Box and Wilson, "On the experimental
 * attainment of optimum conditions", Journal of the Royal Statistical Society B 13 (1951), 1–45; leaving out by the leverage of
 * each point, both from memory).
 */
public final class QuadraticSurface {
    private final double[] means;
    private final double[] scales;
    private final double[][] coefficients;
    private final double[] errors;

    private QuadraticSurface(double[] means, double[] scales, double[][] coefficients, double[] errors) {
        this.means = means;
        this.scales = scales;
        this.coefficients = coefficients;
        this.errors = errors;
    }

    /** Number of coefficients for a number of inputs. */
    public static int terms(int inputs) {
        return 1 + inputs + inputs * (inputs + 1) / 2;
    }

    /**
     * Fits surfaces.
     *
     * @param inputs by evaluation and input
     * @param results by result and evaluation
     * @throws IllegalArgumentException when there are not more evaluations than coefficients
     */
    public static QuadraticSurface of(double[][] inputs, double[][] results) {
        int count = inputs[0].length;
        Checks.above("Number of evaluations", inputs.length, terms(count));
        double[] means = new double[count];
        double[] scales = new double[count];
        for (int input = 0; input < count; input++) {
            int of = input;
            Moments moments = Moments.of(Arrays.stream(inputs).mapToDouble(row -> row[of]).toArray());
            means[input] = moments.mean();
            scales[input] = moments.squares() > 0 ? moments.sd() : 1;
        }
        double[][] design = new double[inputs.length][];
        for (int row = 0; row < design.length; row++) {
            design[row] = new double[terms(count)];
            write(inputs[row], means, scales, design[row]);
        }
        return fitted(means, scales, new Array2DRowRealMatrix(design, false), results);
    }

    private static QuadraticSurface fitted(double[] means, double[] scales, RealMatrix design, double[][] results) {
        QRDecomposition decomposed = new QRDecomposition(design);
        RealMatrix solved = decomposed.getSolver().solve(new Array2DRowRealMatrix(results, false).transpose());
        RealMatrix fits = design.multiply(solved);
        RealMatrix basis = decomposed.getQ().getSubMatrix(0, design.getRowDimension() - 1, 0, design.getColumnDimension() - 1);
        double[] errors = new double[results.length];
        for (int row = 0; row < design.getRowDimension(); row++) {
            double leverage = Arrays.stream(basis.getRow(row)).map(q -> q * q).sum();
            for (int result = 0; result < errors.length; result++) {
                double missed = (results[result][row] - fits.getEntry(row, result)) / Math.max(1e-9, 1 - leverage);
                errors[result] += missed * missed / design.getRowDimension();
            }
        }
        return new QuadraticSurface(means, scales, solved.transpose().getData(), Arrays.stream(errors).map(Math::sqrt).toArray());
    }

    private static void write(double[] inputs, double[] means, double[] scales, double[] terms) {
        int count = inputs.length;
        terms[0] = 1;
        for (int i = 0; i < count; i++) {
            terms[1 + i] = (inputs[i] - means[i]) / scales[i];
        }
        int place = 1 + count;
        for (int i = 0; i < count; i++) {
            for (int j = i; j < count; j++) {
                terms[place++] = terms[1 + i] * terms[1 + j];
            }
        }
    }

    /** Writes the results at inputs, a place for each. */
    public void at(double[] inputs, double[] results) {
        double[] terms = new double[terms(inputs.length)];
        write(inputs, means, scales, terms);
        for (int result = 0; result < coefficients.length; result++) {
            double sum = 0;
            for (int term = 0; term < terms.length; term++) {
                sum += coefficients[result][term] * terms[term];
            }
            results[result] = sum;
        }
    }

    /** By how much a result is missed, root mean square over the evaluations, each left out of the fit in turn. */
    public double error(int result) {
        return errors[result];
    }
}
