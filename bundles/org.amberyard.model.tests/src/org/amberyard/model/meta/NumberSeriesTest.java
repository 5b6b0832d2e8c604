package org.amberyard.model.meta;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NumberSeriesTest {

    @Test
    void whatIsWrittenIsReadBack() {
        assertEquals("0 0.333 -12.5 100000", NumberSeries.text(new double[] {0, 1 / 3.0, -12.5, 100_000}, 3));
        assertArrayEquals(new double[] {0, 0.333, -12.5, 100_000}, NumberSeries.parse("0 0.333 -12.5 100000"));
        assertArrayEquals(new double[] {1, 2.5e-3}, NumberSeries.parse("\t1\n 2.5E-3 "));
        assertArrayEquals(new double[0], NumberSeries.parse(null));
    }

    @Test
    void aWordIsTheDoubleThatIsNearestToIt() {
        for (String word : List.of("0", "7", "007", "5.", ".5", "0.1", "2.675", "12.345678901234", "123456789012345", "999999999999.99",
                "1234567890123456", "0.12345678901234567", "-3.3", "+4", "1e22", "4.9E-324")) {
            assertEquals(Double.parseDouble(word), NumberSeries.parse(word)[0], 0, word);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {".", "1.2.3", "1,5", "NaN", "0x1p3", "1d", "--1", "٣"})
    void otherWordsAreNoNumbers(String word) {
        assertEquals("number 2 is “" + word + "”, which is no number",
                assertThrows(NumberFormatException.class, () -> NumberSeries.parse("1 " + word)).getMessage());
    }

    @Test
    void endlessTextsAreRefused() {
        String endless = "1 ".repeat(100_001);
        assertEquals("there are more than 100000 numbers",
                assertThrows(NumberFormatException.class, () -> NumberSeries.parse(endless)).getMessage());
    }
}
