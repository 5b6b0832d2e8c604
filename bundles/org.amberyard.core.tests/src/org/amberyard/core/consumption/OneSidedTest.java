package org.amberyard.core.consumption;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** Logs of 100 kWh beside what a curve says of them, worked by hand. */
class OneSidedTest {

    private static List<Residual> missing(double... kwh) {
        return Arrays.stream(kwh).mapToObj(k -> new Residual(new LogEntry(100, 0, 100, -5), 100 - k)).toList();
    }

    /** All of six above: 2 × 1/64 = 0.03125; one of eight below: 2 × (1 + 8)/256; four of eight is certain. */
    @Test
    void chancesOfSigns() {
        assertEquals(0.03125, OneSided.signChance(6, 6), 1e-15);
        assertEquals(0.0703125, OneSided.signChance(8, 1), 1e-15);
        assertEquals(1, OneSided.signChance(8, 4), 0);
    }

    /** 1, −1, 2, −2, 3, −3 kWh: mean 0; 28 squares over five degrees of freedom and six logs give an error of 0.966 %. */
    @Test
    void evenMissesAreNotOneSided() {
        OneSided even = OneSided.of(missing(1, -1, 2, -2, 3, -3)).orElseThrow();
        assertEquals(0, even.meanShare(), 1e-15);
        assertEquals(Math.sqrt(28.0 / 5 / 6) / 100, even.errorShare(), 1e-12);
        assertEquals(3, even.above());
        assertFalse(even.holds(1));
    }

    @Test
    void allToOneSideAreOneSided() {
        assertTrue(OneSided.of(missing(1, 2, 3, 1, 2, 9, 2)).orElseThrow().holds(1), "by the signs, 2/128 = 1.6 %");
        assertFalse(OneSided.of(missing(1, 2, 3, 1, 2, 9)).orElseThrow().holds(1), "six signs, 3.1 %, and a mean of 2.4 errors, are not enough");
        assertTrue(OneSided.of(missing(-8, -9, -8, -9, -8, -9, 1)).orElseThrow().holds(1), "by the mean, where the signs would still be chance");
        assertEquals(0.125, OneSided.signChance(7, 1), 1e-15);
    }

    /** A fit that meets all its logs is not one-sided, nor one that meets them but for rounding; of the eight logs here only two lie off it. */
    @Test
    void logsOnTheCurveAreOfNoSide() {
        assertFalse(OneSided.of(missing(0, 0, 0, 0, 0, 0, 0, 0)).orElseThrow().holds(1));
        assertFalse(OneSided.of(missing(1e-12, 1e-12, 2e-12, 1e-12, 1e-12, 1e-12, 1e-12, 1e-12)).orElseThrow().holds(1));
        OneSided two = OneSided.of(missing(0, 0, 0, 0, 0, 0, -1, -2)).orElseThrow();
        assertEquals(OneSided.signChance(2, 0), two.signChance(), 0);
        assertFalse(two.holds(1));
        assertTrue(OneSided.of(missing(3, 3, 3, 3, 3, 3)).orElseThrow().holds(50), "each the same to one side");
    }

    /** Eight logs, all below, 2/256 = 0.78 % by the signs: enough for one group at 2.5 % and for three at 0.83 %, not for four at 0.63 %. */
    @Test
    void manyGroupsAskForMore() {
        OneSided below = OneSided.of(missing(-1, -40, -2, -1, -3, -1, -2, -1)).orElseThrow();
        assertEquals(0.0078125, below.signChance(), 1e-15);
        assertTrue(below.holds(3));
        assertFalse(below.holds(4));
    }

    /** Of 4000 fits of one group of fair logs at most five in a hundred are warned of. */
    @Test
    void fairLogsAreSeldomWarnedOf() {
        Random random = new Random(11);
        for (int logs : new int[] {6, 8, 12, 30}) {
            int warned = 0;
            for (int fit = 0; fit < 4000; fit++) {
                double[] kwh = DoubleStream.generate(() -> 5 * random.nextGaussian()).limit(logs).toArray();
                warned += OneSided.of(missing(kwh)).orElseThrow().holds(1) ? 1 : 0;
            }
            assertTrue(warned <= 200, warned + " of 4000 with " + logs + " logs");
        }
    }

    @Test
    void fewLogsTellNothing() {
        assertEquals(Optional.empty(), OneSided.of(missing(5, 5, 5, 5, 5)));
    }
}
