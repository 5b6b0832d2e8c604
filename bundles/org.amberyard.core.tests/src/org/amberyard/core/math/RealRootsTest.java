package org.amberyard.core.math;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class RealRootsTest {

    private static List<Double> roots(double low, double high, double... coefficients) {
        return RealRoots.between(coefficients, low, high).stream().map(RealRoots.Root::at).toList();
    }

    @Test
    void endsOfTheIntervalAreLeftOut() {
        assertEquals(List.of(), roots(1, 2, 2, -3, 1));
        assertEquals(List.of(1.0, 2.0), roots(0.5, 2.5, 2, -3, 1));
    }

    @Test
    void aRootInTheMiddleIsFoundOnce() {
        assertEquals(List.of(0.0), roots(-1, 1, 0, 1));
        assertEquals(List.of(-0.5, 0.0, 0.5), roots(-1, 1, 0, -0.25, 0, 1));
    }

    @Test
    void complexRootsAreNone() {
        assertEquals(List.of(), roots(-5, 5, 1, 0, 1));
        assertEquals(1, roots(-5, 5, 2, -2, 2, -2).size());
    }

    /** (x - 3/2)² is exact in doubles; a third root stands beside it. */
    @Test
    void aDoubleRootCountsOnceAndIsMarked() {
        List<RealRoots.Root> found = RealRoots.between(new double[] {-5.625, 9.75, -5.5, 1}, 0, 10);
        assertEquals(2, found.size());
        assertEquals(1.5, found.get(0).at(), 1e-9);
        assertEquals(2.5, found.get(1).at(), 1e-12);
        assertFalse(found.get(1).touching());
    }

    /** A product of (x - 1), …, (x - 12) over 8: a polynomial that is known to be hard for rounded arithmetic. */
    @Test
    void rootsOfWilkinsonsKindAreAllFound() {
        double[] product = {1};
        for (int root = 1; root <= 12; root++) {
            product = times(product, root);
        }
        assertEquals(12, roots(0.5, 12.5, product).size());
        for (int root = 1; root <= 12; root++) {
            assertEquals(root, roots(0.5, 12.5, product).get(root - 1), 1e-12);
        }
    }

    private static double[] times(double[] polynomial, double root) {
        double[] product = new double[polynomial.length + 1];
        for (int power = 0; power < polynomial.length; power++) {
            product[power + 1] += polynomial[power];
            product[power] -= root * polynomial[power];
        }
        return product;
    }

    /** Roots are sixteenths, so that the coefficients are exact; some of them are there several times. */
    @Property(tries = 200)
    void everyRootOfAProductIsFoundOnce(@ForAll long seed, @ForAll @IntRange(min = 1, max = 6) int count) {
        Random random = new Random(seed);
        TreeSet<Double> inside = new TreeSet<>();
        double[] product = {1};
        for (int i = 0; i < count; i++) {
            double root = random.nextInt(128) / 16.0;
            product = times(product, root);
            if (root > 1 && root < 7) {
                inside.add(root);
            }
        }
        List<Double> found = roots(1, 7, product);
        assertEquals(inside.size(), found.size());
        int i = 0;
        for (double root : inside) {
            assertEquals(root, found.get(i++), 1e-9);
        }
    }

    /** Between neighbouring roots the sign of the polynomial does not change: none is missing, seen by a fine scan. */
    @Property(tries = 100)
    void noRootIsMissedAmongRandomCoefficients(@ForAll long seed, @ForAll @IntRange(min = 2, max = 40) int degree) {
        double[] coefficients = new Random(seed).doubles(degree + 1, -1, 1).toArray();
        List<Double> found = roots(0.1, 3, coefficients);
        int scanned = 0;
        int steps = 20_000;
        for (int i = 1; i <= steps; i++) {
            double before = value(coefficients, 0.1 + 2.9 * (i - 1) / steps);
            scanned += before * value(coefficients, 0.1 + 2.9 * i / steps) < 0 ? 1 : 0;
        }
        assertTrue(found.size() >= scanned);
        assertEquals(0, (found.size() - scanned) % 2);
    }

    private static double value(double[] coefficients, double at) {
        double sum = 0;
        for (int power = coefficients.length - 1; power >= 0; power--) {
            sum = sum * at + coefficients[power];
        }
        return sum;
    }

    @Test
    void zeroHasEveryRoot() {
        assertThrows(IllegalArgumentException.class, () -> RealRoots.between(new double[] {0, 0}, 0, 1));
    }
}
