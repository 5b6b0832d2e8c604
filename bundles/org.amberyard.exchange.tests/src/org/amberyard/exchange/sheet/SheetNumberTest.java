package org.amberyard.exchange.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers and dates as people write them. */
class SheetNumberTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"1,234.5|1234.5|''", "$1,234|1234|''", "(1,234)|-1234|''", "($ 12.50)|-12.5|''", "12 %|12|%", "32.2 km|32.2|km",
        "-7|-7|''", "−7|-7|''", "1.5e3|1500|''", "USD 5|5|''", "4950 mi|4950|mi", ".5|0.5|''", "1 234|1234|''", "- 3|-3|''"})
    void withAPoint(String text, double value, String unit) {
        assertEquals(Optional.of(new SheetNumber(value, unit)), SheetNumber.of(text, NumberStyle.POINT));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"1.234,5|1234.5|''", "6,2|6.2|''", "863,3|863.3|''", "5425|5425|''", "7,5 km|7.5|km"})
    void withAComma(String text, double value, String unit) {
        assertEquals(Optional.of(new SheetNumber(value, unit)), SheetNumber.of(text, NumberStyle.COMMA));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"12,34.5", "1.2.3", "abc", "5 to 6", "(5", "5)", "--5", "1,23", "6:35", "$"})
    void whatIsNone(String text) {
        assertTrue(SheetNumber.of(text, NumberStyle.POINT).isEmpty(), text);
    }

    @ParameterizedTest
    @CsvSource({"2025-09-04,2025-09-04", "9/4/2025,2025-09-04", "9/4/25,2025-09-04", "04.09.2025,2025-09-04", "2025-09-04 06:35,2025-09-04",
        "9/4/2025 6:35 AM,2025-09-04", "45904,2025-09-04"})
    void dates(String text, String date) {
        assertEquals(date, new SheetDates(Stream.of(text)).of(text).orElseThrow().toString());
    }

    @Test
    void aDayAboveTwelveTellsTheOrder() {
        assertEquals("2025-09-04", new SheetDates(Stream.of("4/9/2025", "13/9/2025")).of("4/9/2025").orElseThrow().toString());
        assertTrue(new SheetDates(Stream.of("4/9/2025", "5/9/2025")).areAmbiguous());
        assertTrue(new SheetDates(Stream.of("2/30/2025")).of("2/30/2025").isEmpty());
        assertTrue(new SheetDates(Stream.of("12")).of("12").isEmpty());
    }
}
