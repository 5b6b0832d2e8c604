package org.amberyard.core.consumption;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.amberyard.core.consumption.Calibration.Pair;
import org.junit.jupiter.api.Test;

class CalibrationTest {

    /**
     * Invented pairs. By hand: residuals 2, −3, 3, −2 about a factor of 1; sum of squares 26, standard error
     * √(4 · 26 / 3) / 200 = 0.0294392; Student's t of 3 degrees of freedom 3.182446 by the tables.
     */
    @Test
    void fourPairsByHand() {
        Calibration calibration = Calibration.of(
                List.of(new Pair(52, 50), new Pair(47, 50), new Pair(61, 58), new Pair(40, 42)));
        assertEquals(1, calibration.factor(), 1e-12);
        Interval interval = calibration.interval95().orElseThrow();
        assertEquals(1 - 3.182446 * 0.0294392, interval.low(), 1e-6);
        assertEquals(1 + 3.182446 * 0.0294392, interval.high(), 1e-6);
        assertTrue(interval.contains(1) && !interval.contains(1.1));
    }

    @Test
    void onePairKnowsNoScatter() {
        Calibration calibration = Calibration.of(List.of(new Pair(120, 100)));
        assertEquals(1.2, calibration.factor(), 1e-12);
        assertEquals(Optional.empty(), calibration.interval95());
        assertEquals(100.0 / 120 - 1, calibration.rawErrorShare(), 1e-12);
        assertEquals(1, calibration.pairs());
    }

    @Test
    void modelFarOffIsSuspicious() {
        assertFalse(Calibration.of(List.of(new Pair(100, 124))).isSuspicious());
        assertTrue(Calibration.of(List.of(new Pair(100, 126))).isSuspicious());
        assertFalse(Calibration.of(List.of(new Pair(100, 76))).isSuspicious());
        assertTrue(Calibration.of(List.of(new Pair(100, 74))).isSuspicious());
    }

    @Test
    void nothingMeasuredIsRefused() {
        assertTrue(assertThrows(IllegalArgumentException.class, () -> Calibration.of(List.of())).getMessage()
                .contains("at least 1 pair"));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> new Pair(0, 3)).getMessage().contains("0.0"));
    }

    @Property(tries = 50)
    void perfectModelHasFactorOne(@ForAll @Size(min = 2, max = 9) List<@DoubleRange(min = 1, max = 500) Double> amounts) {
        Calibration calibration = Calibration.of(amounts.stream().map(a -> new Pair(a, a)).toList());
        assertEquals(1, calibration.factor(), 1e-12);
        assertEquals(0, calibration.interval95().orElseThrow().high() - calibration.interval95().orElseThrow().low(), 1e-9);
    }

    @Property(tries = 50)
    void constantErrorIsFoundExactly(@ForAll @DoubleRange(min = 0.5, max = 2) double factor,
            @ForAll @Size(min = 1, max = 9) List<@DoubleRange(min = 1, max = 500) Double> amounts) {
        Calibration calibration = Calibration.of(amounts.stream().map(a -> new Pair(a * factor, a)).toList());
        assertEquals(factor, calibration.factor(), 1e-12);
        assertEquals(1 / factor - 1, calibration.rawErrorShare(), 1e-12);
    }
}
