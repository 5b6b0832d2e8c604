package org.amberyard.model.meta;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class NumberSeriesTest {

    @Test
    void whatIsWrittenIsReadBack() {
        assertEquals("0 0.333 -12.5 100000", NumberSeries.text(new double[] {0, 1 / 3.0, -12.5, 100_000}, 3));
        assertArrayEquals(new double[] {0, 0.333, -12.5, 100_000}, NumberSeries.parse("0 0.333 -12.5 100000"));
        assertArrayEquals(new double[] {1, 2.5e-3}, NumberSeries.parse("\t1\n 2.5E-3 "));
        assertArrayEquals(new double[0], NumberSeries.parse(null));
    }

    @Test
    void endlessTextsAreRefused() {
        String endless = "1 ".repeat(100_001);
        assertEquals("there are more than 100000 numbers",
                assertThrows(NumberFormatException.class, () -> NumberSeries.parse(endless)).getMessage());
    }
}
