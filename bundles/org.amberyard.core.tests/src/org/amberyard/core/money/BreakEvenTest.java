package org.amberyard.core.money;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.amberyard.core.money.BreakEven.Cheaper;
import org.junit.jupiter.api.Test;

class BreakEvenTest {
    private static final double CENT = 0.01;

    private static String words(DoubleUnaryOperator difference) {
        return BreakEvenSearch.of(difference, 0, 10, 20, CENT).words("Electric", "Diesel",
                v -> String.format(Locale.ROOT, "%.2f", v));
    }

    @Test
    void belowAndAbove() {
        assertEquals("Electric is cheaper than Diesel below 3.10", words(x -> 1000 * (x - 3.1)));
        assertEquals("Electric is cheaper than Diesel above 3.10", words(x -> 1000 * (3.1 - x)));
    }

    @Test
    void alwaysNeverAndTheSame() {
        assertEquals("Electric is always cheaper than Diesel from 0.00 to 10.00", words(x -> -1 - x));
        assertEquals("Electric is never cheaper than Diesel from 0.00 to 10.00", words(x -> 1 + x));
        assertEquals("Electric and Diesel cost the same from 0.00 to 10.00", words(x -> 0.001));
    }

    @Test
    void severalStretches() {
        assertEquals("Electric is cheaper than Diesel below 1.00 and from 4.00 to 8.50",
                words(x -> (x - 1) * (x - 4) * (x - 8.5)));
    }

    @Test
    void aPairOfRootsWithinAStepIsFound() {
        BreakEven found = BreakEvenSearch.of(x -> 1000 * (x - 5.21) * (x - 5.24), 0, 10, 20, CENT);
        assertEquals(3, found.stretches().size());
        assertEquals(5.21, found.values().get(0), 1e-9);
        assertEquals(5.24, found.values().get(1), 1e-9);
    }

    @Test
    void aRootOnAStepOfTheScanIsNoStretch() {
        BreakEven found = BreakEvenSearch.of(x -> x - 5, 0, 10, 20, 0);
        assertEquals(List.of(Cheaper.PLAN, Cheaper.OTHER), found.stretches().stream().map(BreakEven.Stretch::cheaper).toList());
        assertEquals(5, found.values().get(0), 1e-9);
    }

    @Test
    void touchingZeroChangesNothing() {
        assertEquals("Electric is never cheaper than Diesel from 0.00 to 10.00", words(x -> (x - 5) * (x - 5)));
    }

    /** A price that adds a bus, say, makes the difference jump. */
    @Test
    void aJumpIsMarked() {
        BreakEven found = BreakEvenSearch.of(x -> x < 6.2 ? -700 : 300, 0, 10, 20, CENT);
        assertEquals(6.2, found.values().get(0), 1e-9);
        assertTrue(found.stretches().get(0).jumps());
        assertFalse(BreakEvenSearch.of(x -> x - 6.2, 0, 10, 20, CENT).stretches().get(0).jumps());
    }

    @Test
    void aStretchWithoutDifference() {
        BreakEven found = BreakEvenSearch.of(x -> x < 2 ? x - 2 : x > 6 ? x - 6 : 0, 0, 10, 20, 1e-9);
        assertEquals(List.of(Cheaper.PLAN, Cheaper.NEITHER, Cheaper.OTHER),
                found.stretches().stream().map(BreakEven.Stretch::cheaper).toList());
        assertEquals(2, found.values().get(0), 1e-6);
        assertEquals(6, found.values().get(1), 1e-6);
    }

    /** Ends between the steps of the scan, which are half apart. */
    @Test
    void aStretchWithoutDifferenceEndsWhereItEnds() {
        BreakEven found = BreakEvenSearch.of(x -> x < 2.2 ? x - 2.2 : x > 6.3 ? x - 6.3 : 0, 0, 10, 20, 1e-9);
        assertEquals(List.of(Cheaper.PLAN, Cheaper.NEITHER, Cheaper.OTHER),
                found.stretches().stream().map(BreakEven.Stretch::cheaper).toList());
        assertEquals(2.2, found.values().get(0), 1e-7);
        assertEquals(6.3, found.values().get(1), 1e-7);
        assertTrue(found.stretches().stream().noneMatch(BreakEven.Stretch::jumps));
    }

    @Test
    void aJumpOutOfAStretchWithoutDifferenceIsMarked() {
        BreakEven found = BreakEvenSearch.of(x -> x < 2.2 ? 0 : 300, 0, 10, 20, CENT);
        assertEquals(2.2, found.values().get(0), 1e-7);
        assertTrue(found.stretches().get(0).jumps());
    }

    /** Put back into the difference, each value gives none, and stretches cover the range with the signs that they name. */
    @Property(tries = 100)
    void valuesAreVerifiedAndStretchesCoverTheRange(@ForAll long seed, @ForAll @IntRange(min = 0, max = 6) int roots) {
        Random random = new Random(seed);
        double[] at = random.doubles(roots, 0.2, 9.8).toArray();
        DoubleUnaryOperator difference = x -> {
            double product = 1000;
            for (double root : at) {
                product *= x - root;
            }
            return product;
        };
        BreakEven found = BreakEvenSearch.of(difference, 0, 10, 200, 0);
        double from = 0;
        for (BreakEven.Stretch stretch : found.stretches()) {
            assertEquals(from, stretch.from(), 0);
            double middle = difference.applyAsDouble((stretch.from() + stretch.to()) / 2);
            assertEquals(stretch.cheaper() == Cheaper.PLAN, middle < 0);
            assertFalse(stretch.jumps());
            from = stretch.to();
        }
        assertEquals(10, from, 0);
        found.values().forEach(v -> assertEquals(0, difference.applyAsDouble(v), 1e-4));
        assertEquals(0, (roots - found.values().size()) % 2);
    }
}
