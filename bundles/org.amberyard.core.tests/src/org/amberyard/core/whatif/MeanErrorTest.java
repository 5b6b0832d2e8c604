package org.amberyard.core.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Means and their errors by hand. Points of Student's distribution and the normal one at 97.5 % are from memory. */
class MeanErrorTest {
    private static final double STUDENT_1 = 12.7062047;
    private static final double STUDENT_5 = 2.5705818;
    private static final double NORMAL = 1.9599640;
    private static final double[] SIX = {1, 2, 3, 4, 5, 6};

    private static MeanError gathered(int replicates, int firstDraw, double... values) {
        MeanError error = new MeanError(replicates);
        error.add(values, firstDraw, 0, values.length);
        return error;
    }

    /** Variance of 1 to 6 is 17.5 / 5 = 3.5. */
    @Test
    void independentDraws() {
        MeanError error = gathered(1, 0, SIX);
        assertEquals(6, error.draws());
        assertEquals(3.5, error.mean(), 1e-15);
        assertEquals(STUDENT_5 / NORMAL * Math.sqrt(3.5 / 6), error.standardError(), 1e-6);
    }

    /** Draws 1, 3, 5 and 2, 4, 6 have means of 3 and 4, which scatter by 1/√2, so their mean is known to a half. */
    @Test
    void drawsOfTwoSamplesInTurn() {
        for (int first : new int[] {0, 1, 2, 7}) {
            MeanError error = gathered(2, first, SIX);
            assertEquals(6, error.draws());
            assertEquals(3.5, error.mean(), 1e-15);
            assertEquals(STUDENT_1 / NORMAL * 0.5, error.standardError(), 1e-6);
        }
    }

    /** It comes to the same stretch by stretch: a draw goes to the sample that its number says, wherever the stretch begins. */
    @Test
    void stretchByStretch() {
        MeanError error = new MeanError(2);
        error.add(SIX, 0, 0, 1);
        error.add(SIX, 1, 1, 4);
        error.add(new double[] {5, 6}, 4, 0, 2);
        assertEquals(6, error.draws());
        assertEquals(gathered(2, 0, SIX).standardError(), error.standardError(), 1e-12);
        MeanError three = gathered(3, 0, 10, 20, 40, 30);
        // Samples 10 and 30, 20, 40: means 20, 20, 40 scatter by 11.547, and the mean of four draws is 25.
        assertEquals(25, three.mean(), 1e-12);
        assertEquals(4.3026527 / NORMAL * Math.sqrt(400.0 / 3) / Math.sqrt(3), three.standardError(), 1e-5);
        MeanError parts = new MeanError(3);
        parts.add(new double[] {0, 10, 20}, 0, 1, 3);
        parts.add(new double[] {0, 40, 30}, 2, 1, 3);
        assertEquals(three.standardError(), parts.standardError(), 1e-9);
    }

    @Test
    void ofTooFewNothingIsTold() {
        assertTrue(Double.isNaN(gathered(1, 0, 7).standardError()));
        assertTrue(Double.isNaN(gathered(4, 0, 7).standardError()));
        assertTrue(Double.isNaN(new MeanError(1).standardError()));
        assertEquals(0, gathered(4, 0, 7, 7).standardError(), 0);
        assertThrows(IllegalArgumentException.class, () -> new MeanError(0));
    }

    /** Of five draws by two there are points at two, four and five. */
    @Test
    void theCourseOfAMean() {
        List<Convergence> course = Convergence.of(new double[] {2, 4, 9, 9, 1}, 1, 2);
        assertEquals(List.of(2, 4, 5), course.stream().map(Convergence::draws).toList());
        assertEquals(List.of(3.0, 6.0, 5.0), course.stream().map(Convergence::mean).toList());
        assertEquals(STUDENT_1 / NORMAL, course.get(0).standardError(), 1e-6);
        assertEquals(List.of(4), Convergence.of(new double[4], 1, 4).stream().map(Convergence::draws).toList());
        assertThrows(IllegalArgumentException.class, () -> Convergence.of(SIX, 1, 0));
    }

    /** More numbers than are summed in one go, halved twice: 0 to 399 have a mean of 199.5 and a variance of 400 · 401 / 12. */
    @Test
    void manyNumbersInParts() {
        double[] numbers = IntStream.range(0, 402).mapToDouble(i -> i - 1).toArray();
        Moments moments = Moments.of(numbers, 1, 401);
        assertEquals(400, moments.count());
        assertEquals(199.5, moments.mean(), 1e-11);
        assertEquals(400 * 401 / 12.0, moments.variance(), 1e-8);
        assertEquals(Math.sqrt(401 / 12.0), moments.standardError(), 1e-10);
        assertEquals(moments, Moments.NONE.plus(moments));
        assertEquals(moments, moments.plus(Moments.NONE));
        assertEquals(new Moments(0, 0, 0), Moments.of());
        assertEquals(new Moments(3, 4, 24), Moments.of(2).plus(Moments.of(2, 8)));
    }

    /** In another unit every percentile is that many times as large. */
    @Test
    void drawsInAnotherUnit() {
        SortedDraws draws = SortedDraws.of(3, 1, 2);
        SortedDraws cents = draws.times(100);
        assertEquals(3, cents.count());
        assertEquals(150, cents.quantile(0.25), 1e-12);
        assertEquals(1.0 / 3, cents.exceeded(200), 0);
        assertEquals(2.0 / 3, cents.exceeded(199.9), 0);
        assertEquals(0, cents.exceeded(300), 0);
        assertEquals(1, draws.times(1).quantile(0), 0);
        assertThrows(IllegalArgumentException.class, () -> draws.quantile(1.01));
        assertThrows(IllegalArgumentException.class, () -> draws.quantile(-0.01));
        assertThrows(IllegalArgumentException.class, () -> draws.exceedance(0));
        assertThrows(IllegalArgumentException.class, SortedDraws::of);
    }
}
