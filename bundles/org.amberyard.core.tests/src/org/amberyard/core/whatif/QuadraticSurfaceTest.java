package org.amberyard.core.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** A surface gives quadratic functions back. */
class QuadraticSurfaceTest {
    private static final int EVALUATIONS = 60;

    private final Random random = new Random(3);
    private final double[][] inputs = inputs();

    private double[][] inputs() {
        double[][] made = new double[EVALUATIONS][3];
        for (double[] row : made) {
            row[0] = 100 + 10 * random.nextDouble();
            row[1] = random.nextDouble();
            row[2] = -5 + random.nextDouble();
        }
        return made;
    }

    private static double quadratic(double[] x) {
        return 3 + 2 * x[0] - x[1] * x[2] + 0.5 * x[0] * x[1] + 4 * x[2] * x[2];
    }

    private double[] of(ToDoubleFunction<double[]> function) {
        return Arrays.stream(inputs).mapToDouble(function).toArray();
    }

    @Test
    void aQuadraticFunctionIsGivenBack() {
        QuadraticSurface surface = QuadraticSurface.of(inputs, new double[][] {of(QuadraticSurfaceTest::quadratic), of(x -> x[0])},
                SurfaceShape.quadratic(3));
        double[] results = new double[2];
        double[] at = {107, 0.2, -4.4};
        surface.at(at, results);
        assertEquals(quadratic(at), results[0], 1e-8);
        assertEquals(107, results[1], 1e-9);
    }

    /** Between its two values the surface is a straight line, and exact where the function is one for each of them. */
    @Test
    void anInputOfTwoValuesHasNoSquare() {
        for (double[] row : inputs) {
            row[1] = row[1] < 0.5 ? 0.8 : 1.2;
            row[2] = 7;
        }
        QuadraticSurface surface = QuadraticSurface.of(inputs, new double[][] {of(x -> 1000 * x[1] + x[0] * x[1])},
                SurfaceShape.quadratic(3));
        double[] results = new double[1];
        surface.at(new double[] {104, 1, 7}, results);
        assertEquals(1104, results[0], 1e-8);
    }

    @Test
    void tooFewEvaluationsAreRefused() {
        assertThrows(IllegalArgumentException.class,
                () -> QuadraticSurface.of(Arrays.copyOf(inputs, 10), new double[][] {new double[10]},
                        SurfaceShape.quadratic(3)));
    }

    /** The first input is known by itself: it stands in products alone, and those with itself are left out. */
    @Test
    void whatIsKnownBesideASurfaceStandsInProductsAlone() {
        List<Boolean> known = List.of(true, false, false);
        assertEquals(3, new SurfaceShape(known, SurfaceShape.Degree.STRAIGHT).terms());
        assertEquals(6, new SurfaceShape(known, SurfaceShape.Degree.OWN).terms());
        assertEquals(8, new SurfaceShape(known, SurfaceShape.Degree.ALL).terms());
        assertEquals(10, SurfaceShape.quadratic(3).terms());
        QuadraticSurface surface = QuadraticSurface.of(inputs, new double[][] {of(x -> 7 - x[2] + (x[0] - mean(0)) * (x[1] - mean(1)))},
                new SurfaceShape(known, SurfaceShape.Degree.ALL));
        double[] results = new double[1];
        surface.at(new double[] {104, 0.3, -4.5}, results);
        assertEquals(7 + 4.5 + (104 - mean(0)) * (0.3 - mean(1)), results[0], 1e-8);
    }

    private double mean(int input) {
        return Arrays.stream(inputs).mapToDouble(row -> row[input]).average().orElseThrow();
    }
}
