package org.amberyard.core.whatif;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** Indices and their intervals from so few rows that they can be computed by hand. */
class IndexRowsTest {
    private static final double EXACT = 1e-12;
    /** 97.5 % point of Student's distribution with one degree of freedom (from memory). */
    private static final double STUDENT_OF_TWO = 12.7062047361747;
    /** Three rows of a plan with two groups: first point, second point, with each group exchanged. */
    private static final double[] ROWS = {1, 2, 3, 7, 4, 6, 5, 2, 0, 1, 3, 3};

    /**
     * Second points are 2, 6, 1 and those exchanged 3, 5, 3: mean product 13, mean of all 10/3, variance 14 − 100/9 = 26/9, so the first
     * index is (13 − 100/9) / (26/9) = 17/26. First points are 1, 4, 0: they differ from the exchanged by 2, 1, 3, whose squares sum to 14;
     * the variance of first and second points is 29/3 − 49/9 = 38/9, so the total index is 14 / (2 · 3 · 38/9) = 21/38.
     */
    @Test
    void indicesByHand() {
        IndexRows rows = IndexRows.of(ROWS, 2);
        assertEquals(3, rows.count());
        int[] all = {0, 1, 2};
        assertEquals(17.0 / 26, rows.first(all)[0], EXACT);
        assertEquals(21.0 / 38, rows.total(all)[0], EXACT);
    }

    /** The second group: exchanged 7, 2, 3, mean product 29/3, mean 21/6, variance 103/6 − 49/4; differences 6, 2, 3. */
    @Test
    void indicesOfTheSecondGroup() {
        IndexRows rows = IndexRows.of(ROWS, 2);
        int[] all = {0, 1, 2};
        assertEquals((29.0 / 3 - 12.25) / (103.0 / 6 - 12.25), rows.first(all)[1], EXACT);
        assertEquals(49 / (2 * 3 * 38.0 / 9), rows.total(all)[1], EXACT);
    }

    /** The first and the third row alone: second points 2, 1, exchanged 3, 3; first points 1, 0. */
    @Test
    void someRowsAlone() {
        IndexRows rows = IndexRows.of(ROWS, 2);
        int[] some = {0, 2};
        assertEquals((4.5 - 81.0 / 16) / (23.0 / 4 - 81.0 / 16), rows.first(some)[0], EXACT);
        assertEquals((4.0 + 9) / (2 * 2 * (6.0 / 4 - 1)), rows.total(some)[0], EXACT);
        int[] twice = {0, 0, 2, 2};
        assertArrayEquals(rows.first(some), rows.first(twice), EXACT);
        assertArrayEquals(rows.total(some), rows.total(twice), EXACT);
    }

    /** A row that is not complete counts for nothing, and a mean far from zero costs no digits. */
    @Test
    void whatDoesNotCount() {
        double[] more = Arrays.copyOf(ROWS, 15);
        Arrays.fill(more, 12, 15, 99);
        int[] all = {0, 1, 2};
        assertArrayEquals(IndexRows.of(ROWS, 2).first(all), IndexRows.of(more, 2).first(all), 0);
        double[] far = DoubleStream.of(ROWS).map(r -> 1e9 + r).toArray();
        assertEquals(17.0 / 26, IndexRows.of(far, 2).first(all)[0], 1e-6);
        assertEquals(21.0 / 38, IndexRows.of(far, 2).total(all)[0], 1e-6);
        assertThrows(IllegalArgumentException.class, () -> IndexRows.of(Arrays.copyOf(ROWS, 7), 2));
    }

    /** Rows 0 and 2 are the first sample, 1 and 3 the second: the interval reaches as far as Student says of their two indices. */
    @Test
    void intervalsOfTwoSamplesByHand() {
        double[] four = Arrays.copyOf(ROWS, 16);
        System.arraycopy(new double[] {5, 8, 6, 1}, 0, four, 12, 4);
        IndexRows rows = IndexRows.of(four, 2);
        double one = rows.first(new int[] {0, 2})[0];
        double other = rows.first(new int[] {1, 3})[0];
        Band first = SobolIndices.ofSamples(four, 2, 2, 0.95).first().get(0);
        double reach = STUDENT_OF_TWO * Math.abs(one - other) / 2;
        assertEquals(rows.first(new int[] {0, 1, 2, 3})[0], first.value(), EXACT);
        assertEquals(first.value() - reach, first.low(), 1e-8);
        assertEquals(first.value() + reach, first.high(), 1e-8);
        double oneTotal = rows.total(new int[] {0, 2})[1];
        double otherTotal = rows.total(new int[] {1, 3})[1];
        Band total = SobolIndices.ofSamples(four, 2, 2, 0.95).total().get(1);
        assertEquals(rows.total(new int[] {0, 1, 2, 3})[1], total.value(), EXACT);
        assertEquals(STUDENT_OF_TWO * Math.abs(oneTotal - otherTotal), total.high() - total.low(), 1e-8);
        assertThrows(IllegalArgumentException.class, () -> SobolIndices.ofSamples(four, 2, 1, 0.95));
        assertThrows(IllegalArgumentException.class, () -> SobolIndices.ofSamples(ROWS, 2, 2, 0.95));
    }

    /**
     * Of rows drawn again from two, an index is that of the first alone, (2² + 2²) / (4 · 1/4) = 8, of the second alone, 2 / 4, or, half of
     * the time, of both, 5 / (4 · 59/16), the least.
     */
    @Test
    void intervalsOfRowsDrawnAgain() {
        double[] two = Arrays.copyOf(ROWS, 8);
        double[] possible = {20.0 / 59, 0.5, 8};
        Band wide = SobolIndices.of(two, 2, new SobolIndices.Bootstrap(400, 0.95, 1)).total().get(0);
        assertEquals(possible[0], wide.value(), EXACT);
        assertEquals(possible[0], wide.low(), EXACT);
        assertEquals(possible[2], wide.high(), EXACT);
        Band narrow = SobolIndices.of(two, 2, new SobolIndices.Bootstrap(400, 0.2, 1)).total().get(0);
        assertEquals(possible[0], narrow.low(), EXACT);
        assertEquals(possible[1], narrow.high(), EXACT);
    }
}
