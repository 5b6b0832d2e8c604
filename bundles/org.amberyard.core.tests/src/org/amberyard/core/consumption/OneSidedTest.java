package org.amberyard.core.consumption;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
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
        assertFalse(even.holds());
    }

    @Test
    void allToOneSideAreOneSided() {
        assertTrue(OneSided.of(missing(1, 2, 3, 1, 2, 9)).orElseThrow().holds());
        assertTrue(OneSided.of(missing(-8, -9, -8, -9, -8, -9, 1)).orElseThrow().holds(), "by the mean, where the signs would still be chance");
        assertEquals(0.125, OneSided.signChance(7, 1), 1e-15);
    }

    @Test
    void fewLogsTellNothing() {
        assertEquals(Optional.empty(), OneSided.of(missing(5, 5, 5, 5, 5)));
    }
}
