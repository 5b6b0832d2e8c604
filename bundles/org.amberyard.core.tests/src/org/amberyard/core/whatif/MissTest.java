package org.amberyard.core.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What is said of misses holds as often as it is said to, however they are distributed. */
class MissTest {
    private static final int SAMPLES = 2000;

    /** The numbers that tables of tolerance limits give for 95 % with a confidence of 95 % (Wilks; from memory). */
    @Test
    void soManyDrawsMakeABound() {
        ToleranceBound bound = new ToleranceBound(0.95, 0.95);
        assertEquals(59, bound.draws(0));
        assertEquals(93, bound.draws(1));
        assertEquals(124, bound.draws(2));
        assertEquals(59, Miss.draws());
        assertEquals(Double.POSITIVE_INFINITY, bound.of(new double[58]));
        assertEquals(58, bound.of(IntStream.range(0, 59).mapToDouble(i -> i).toArray()));
        assertEquals(91, bound.of(IntStream.range(0, 93).mapToDouble(i -> i).toArray()));
        assertThrows(IllegalArgumentException.class, () -> new ToleranceBound(1, 0.95));
    }

    /** In nineteen samples of twenty the bound lies beyond the true 95th percentile of the sizes, and not always. */
    private static void held(ToDoubleFunction<Random> miss, double percentile, double least) {
        Random random = new Random(5);
        int held = 0;
        for (int sample = 0; sample < SAMPLES; sample++) {
            double[] missed = IntStream.range(0, Miss.draws()).mapToDouble(i -> miss.applyAsDouble(random)).toArray();
            held += Miss.of(missed).within() >= percentile ? 1 : 0;
        }
        assertTrue(held >= least * SAMPLES && held <= 0.97 * SAMPLES, held + " of " + SAMPLES);
    }

    @Test
    void theBoundIsAsSureAsItSays() {
        held(random -> 2 * random.nextDouble() - 1, 0.95, 0.935);
        held(random -> Math.pow(random.nextDouble(), -1), 20, 0.935);
    }

    /** Misses of 1 and 3 have a mean of 2 that is known to 1, times 12.706 by Student's distribution of one degree of freedom (from memory). */
    @Test
    void twoMissesByHand() {
        Miss miss = Miss.of(new double[] {-1, -3});
        assertEquals(-2, miss.mean(), 1e-12);
        assertEquals(12.7062047, miss.meanReach(), 1e-6);
        assertEquals(3, miss.largest(), 0);
        assertEquals(Double.POSITIVE_INFINITY, miss.within(), "two are too few for a bound");
    }

    /** One draw in twelve takes a pack more: what most draws miss says nothing of it, the bound does. */
    @Test
    void stepsAreNotOverlooked() {
        Random random = new Random(6);
        double[] missed = IntStream.range(0, Miss.draws()).mapToDouble(i -> random.nextDouble() + (random.nextInt(12) == 0 ? 1000 : 0)).toArray();
        Miss miss = Miss.of(missed);
        assertTrue(miss.within() >= 1000 && miss.largest() >= miss.within(), miss.toString());
    }

    @Test
    void theMeanIsKnownAsFarAsItSays() {
        Random random = new Random(7);
        int held = 0;
        for (int sample = 0; sample < SAMPLES; sample++) {
            Miss miss = Miss.of(IntStream.range(0, 20).mapToDouble(i -> 3 + random.nextGaussian()).toArray());
            held += Math.abs(miss.mean() - 3) <= miss.meanReach() ? 1 : 0;
        }
        assertEquals(0.95, (double) held / SAMPLES, 0.015);
    }

    /** The tenth percentile of 0 to 100 lies at 10; a twentieth may be anywhere, and the rest two off. */
    @Test
    void percentilesAreMovedByWhatIsMissed() {
        SortedDraws draws = SortedDraws.of(IntStream.rangeClosed(0, 100).mapToDouble(i -> i).toArray());
        Band band = new Miss(2, 5, 0, 0).percentile(draws, 0.1);
        assertEquals(10, band.value(), 1e-12);
        assertEquals(3, band.low(), 1e-12);
        assertEquals(17, band.high(), 1e-12);
        assertEquals(new Band(10, 10, 10), Miss.NONE.percentile(draws, 0.1));
    }
}
