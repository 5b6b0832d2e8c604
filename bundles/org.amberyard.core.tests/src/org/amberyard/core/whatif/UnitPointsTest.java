package org.amberyard.core.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class UnitPointsTest {

    @Property(tries = 100)
    void aShuffleHasEachNumberOnce(@ForAll long seed, @ForAll @IntRange(min = 1, max = 5000) int size) {
        Shuffle shuffle = new Shuffle(size, new CounterRandom(seed, RandomUse.ORDER), 3);
        assertEquals(size, IntStream.range(0, size).map(shuffle::at).filter(n -> n >= 0 && n < size).distinct()
                .count());
    }

    /** Where a number goes is evenly spread over seeds. */
    @Test
    void aShuffleIsFair() {
        int[] first = new int[6];
        for (int seed = 0; seed < 6000; seed++) {
            first[new Shuffle(6, new CounterRandom(seed, RandomUse.ORDER), 0).at(0)]++;
        }
        double squares = IntStream.of(first).mapToDouble(count -> (count - 1000.0) * (count - 1000.0) / 1000).sum();
        assertTrue(squares < 20.5, "chi square of 5 degrees of freedom exceeds 20.5 once in 1000: " + squares);
    }

    @Property(tries = 50)
    void aLatinHypercubeFillsEachStratumOnce(@ForAll long seed, @ForAll @IntRange(min = 1, max = 700) int draws) {
        LatinHypercube points = new LatinHypercube(seed, draws, 3);
        for (int dimension = 0; dimension < 3; dimension++) {
            int coordinate = dimension;
            assertEquals(draws, IntStream.range(0, draws).map(d -> (int) (points.at(d, coordinate) * draws)).distinct()
                    .count());
        }
        assertThrows(IndexOutOfBoundsException.class, () -> points.at(draws, 0));
    }

    /**
     * Any 2ᵏ neighbouring points of a scrambled sequence that start at a multiple of 2ᵏ fill 2ᵏ equal intervals once.
     */
    @Property(tries = 20)
    void scramblingKeepsSobolPointsEven(@ForAll long seed) {
        SobolPoints points = SobolPoints.scrambled(seed, 40);
        for (int dimension = 0; dimension < 40; dimension++) {
            int coordinate = dimension;
            assertEquals(256, IntStream.range(512, 768).map(d -> (int) (points.at(d, coordinate) * 256)).distinct()
                    .count());
        }
    }

    /** The first two coordinates are a net of the best kind: elementary rectangles of any shape hold a point each. */
    @Property(tries = 20)
    void scramblingKeepsTheNet(@ForAll long seed) {
        SobolPoints points = SobolPoints.scrambled(seed, 2);
        for (int bits = 0; bits <= 6; bits++) {
            int wide = 1 << bits;
            int high = 64 / wide;
            assertEquals(64, IntStream.range(0, 64)
                    .map(d -> (int) (points.at(d, 0) * wide) * high + (int) (points.at(d, 1) * high)).distinct()
                    .count());
        }
    }

    @Test
    void eachScrambledPointIsEvenlyRandom() {
        double[] first = IntStream.range(0, 2000).mapToDouble(seed -> SobolPoints.scrambled(seed, 1).at(5, 0))
                .toArray();
        Moments moments = Moments.of(first);
        assertEquals(0.5, moments.mean(), 4 * moments.standardError());
        assertEquals(Math.sqrt(1 / 12.0), moments.sd(), 0.01);
    }

    @Test
    void limitOfDimensionsIsSaid() {
        assertEquals(1000, SobolPoints.plain(1000).dimensions());
        assertEquals("Number of variables of a Sobol sequence is 1001.0 but must be from 1.0 to 1000.0",
                assertThrows(IllegalArgumentException.class, () -> SobolPoints.plain(1001)).getMessage());
    }

    /** Star discrepancy of 64 points in two dimensions, by all boxes with corners at their coordinates. */
    @Test
    void sobolPointsAreMoreEvenThanRandomOnes() {
        double random = IntStream.range(0, 20).mapToDouble(seed -> starDiscrepancy(new RandomPoints(seed, 2), 64)).min()
                .orElseThrow();
        for (int seed = 0; seed < 20; seed++) {
            double scrambled = starDiscrepancy(SobolPoints.scrambled(seed, 2), 64);
            assertTrue(scrambled < random, scrambled + " against " + random);
        }
        assertTrue(starDiscrepancy(SobolPoints.plain(2), 64) < random);
    }

    private static double starDiscrepancy(UnitPoints points, int count) {
        double[] xs = corners(points, count, 0);
        double[] ys = corners(points, count, 1);
        double worst = 0;
        for (double x : xs) {
            for (double y : ys) {
                long inside = IntStream.range(0, count).filter(d -> points.at(d, 0) < x && points.at(d, 1) < y).count();
                long atMost = IntStream.range(0, count).filter(d -> points.at(d, 0) <= x && points.at(d, 1) <= y)
                        .count();
                worst = Math.max(worst, Math.max(x * y - (double) inside / count, (double) atMost / count - x * y));
            }
        }
        return worst;
    }

    private static double[] corners(UnitPoints points, int count, int dimension) {
        return Stream.concat(IntStream.range(0, count).mapToObj(d -> points.at(d, dimension)), Stream.of(1.0))
                .mapToDouble(c -> c).toArray();
    }

    @Test
    void replicatesTakeTurns() {
        ReplicatedPoints points = ReplicatedPoints.of(5, 4, seed -> SobolPoints.scrambled(seed, 3));
        assertEquals(4, points.replicates());
        assertEquals(3, points.dimensions());
        assertNotEquals(points.at(0, 0), points.at(1, 0));
        for (int replicate = 0; replicate < 4; replicate++) {
            int sample = replicate;
            assertEquals(16, IntStream.range(0, 16).map(d -> (int) (points.at(4 * d + sample, 2) * 16)).distinct()
                    .count());
        }
    }

    @Test
    void drawsPutDistributionsIn() {
        Draws draws = new Draws(new RandomPoints(1, 2), List.of(new Uniform(0, 10), new Normal(0, 1)));
        assertEquals(10 * draws.points().at(7, 0), draws.at(7)[0], 1e-12);
        assertEquals(draws.at(7, 1), draws.at(7)[1], 0);
        assertThrows(IllegalArgumentException.class,
                () -> new Draws(new RandomPoints(1, 2), List.of(new Uniform(0, 1))));
    }
}
