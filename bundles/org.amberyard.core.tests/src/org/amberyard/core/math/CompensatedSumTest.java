package org.amberyard.core.math;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class CompensatedSumTest {

    @Property(tries = 200)
    void isThatOfTheStandardLibrary(@ForAll long seed, @ForAll @IntRange(max = 300) int count) {
        Random random = new Random(seed);
        double[] numbers = new double[count];
        Arrays.setAll(numbers, i -> random.nextInt(3) == 0 ? 0 : random.nextGaussian() * Math.pow(10, random.nextInt(12)));
        assertEquals(Arrays.stream(numbers).sum(), CompensatedSum.of(numbers));
    }

    @Property(tries = 200)
    void sumsOfTheFirstAreThoseOfTheLibraryEach(@ForAll long seed, @ForAll @IntRange(max = 40) int count) {
        Random random = new Random(seed);
        List<Double> numbers = Stream.generate(() -> random.nextGaussian() * Math.pow(10, random.nextInt(12))).limit(count).toList();
        double[] sums = CompensatedSum.upTo(numbers, Double::doubleValue);
        assertEquals(count, sums.length);
        for (int last = 0; last < count; last++) {
            assertEquals(numbers.stream().limit(last + 1).mapToDouble(Double::doubleValue).sum(), sums[last]);
        }
        assertEquals(count == 0 ? 0 : sums[count - 1], CompensatedSum.of(numbers, Double::doubleValue));
    }

    @Test
    void tenthsAddUp() {
        double[] tenths = new double[10];
        Arrays.fill(tenths, 0.1);
        assertEquals(1, CompensatedSum.of(tenths));
    }
}
