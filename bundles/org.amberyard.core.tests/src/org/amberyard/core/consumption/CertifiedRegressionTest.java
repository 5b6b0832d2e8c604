package org.amberyard.core.consumption;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Least squares and intervals against NIST, "Statistical Reference Datasets", linear regression, data set NoInt1 (one term,
 * no constant), certified values from memory, and against small cases worked by hand.
 */
class CertifiedRegressionTest {
    private static final double[] X = IntStream.rangeClosed(60, 70).asDoubleStream().toArray();
    private static final double[] Y = IntStream.rangeClosed(130, 140).asDoubleStream().toArray();

    @Test
    void oneTermWithoutConstant() {
        var solution = NonNegativeLeastSquares.solve(new double[][] {X}, Y);
        assertEquals(2.07438016528926, solution.coefficients()[0], 1e-13);
        assertEquals(3.56753034006338, Math.sqrt(solution.residualSum() / 10), 1e-12);
        Interval interval = new TermPrecision(new double[][] {X}, solution.residualSum())
                .of(0, solution.coefficients()[0]);
        double student10 = 2.228138852;
        assertEquals(2.07438016528926 + student10 * 0.0165289256198347, interval.high(), 1e-9);
    }

    /** y = 3a − b is best met without b: a = (1·3 + 1·2) / 2. By hand. */
    @Test
    void negativeTermIsLeftOut() {
        var solution = NonNegativeLeastSquares.solve(new double[][] {{1, 1}, {0, 1}}, new double[] {3, 2});
        assertArrayEquals(new double[] {2.5, 0}, solution.coefficients(), 1e-12);
        assertEquals(0.5, solution.residualSum(), 1e-12);
    }

    @Test
    void columnsOfOneMixtureShareOneCoefficient() {
        var solution = NonNegativeLeastSquares.solve(new double[][] {{1, 2}, {2, 4}, {0, 0}}, new double[] {3, 6});
        assertEquals(3, solution.coefficients()[0] + 2 * solution.coefficients()[1], 1e-12);
        assertEquals(0, solution.coefficients()[2]);
    }

    /** Columns at right angles have index 1; with an angle of cosine c it is √((1 + c) / (1 − c)). By hand. */
    @Test
    void conditionIndexByHand() {
        assertEquals(1, Collinearity.conditionIndex(new double[][] {{5, 0}, {0, 0.1}}), 1e-12);
        assertEquals(2, Collinearity.conditionIndex(new double[][] {{1, 0}, {0.6, 0.8}}), 1e-12);
        assertTrue(Collinearity.conditionIndex(new double[][] {{1, 2}, {2, 4}}) > 1e12);
    }
}
