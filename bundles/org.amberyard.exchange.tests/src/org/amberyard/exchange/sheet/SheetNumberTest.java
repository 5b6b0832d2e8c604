package org.amberyard.exchange.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers and dates as people write them. */
class SheetNumberTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"1,234.5|1234.5|''", "$1,234|1234|''", "(1,234)|-1234|''", "($ 12.50)|-12.5|''", "12 %|12|%", "32.2 km|32.2|km",
        "-7|-7|''", "−7|-7|''", "1.5e3|1500|''", "USD 5|5|''", "4950 mi|4950|mi", ".5|0.5|''", "1 234|1234|''", "- 3|-3|''",
        "$-5|-5|''", "-$5|-5|''", "1,234-|-1234|''", "12 -|-12|''", "55 gal |55|gal", "3 m²|3|m²"})
    void withAPoint(String text, double value, String unit) {
        assertRead(value, unit, text, NumberStyle.POINT);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"1.234,5|1234.5|''", "6,2|6.2|''", "863,3|863.3|''", "5425|5425|''", "7,5 km|7.5|km"})
    void withAComma(String text, double value, String unit) {
        assertRead(value, unit, text, NumberStyle.COMMA);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"12,34.5", "1.2.3", "abc", "5 to 6", "(5", "5)", "--5", "1,23", "6:35", "$", "(-5)", "-5-", "-$-5"})
    void whatIsNone(String text) {
        assertTrue(SheetNumber.of(text, NumberStyle.POINT).isEmpty(), text);
    }

    @ParameterizedTest
    @CsvSource({"2025-09-04,2025-09-04", "9/4/2025,2025-09-04", "9/4/25,2025-09-04", "04.09.2025,2025-09-04", "2025-09-04 06:35,2025-09-04",
        "9/4/2025 6:35 AM,2025-09-04", "45904,2025-09-04"})
    void dates(String text, String date) {
        assertEquals(date, new SheetDates(Stream.of(text)).of(text).orElseThrow().toString());
    }

    /** A point in the time behind a date says nothing about the date. */
    @ParameterizedTest
    @CsvSource({"9/4/2025 2:05 p.m.,2025-09-04", "1/2/2025 10:00:00.000,2025-01-02", "04.13.2025,2025-04-13"})
    void pointsElsewhereTellNoOrder(String text, String date) {
        assertEquals(date, new SheetDates(Stream.of(text)).of(text).orElseThrow().toString());
    }

    @Test
    void bothOrdersInAColumnAreAMixture() {
        assertEquals(Optional.of("“13/9/2025” has the day first, “9/14/2025” the month"),
                new SheetDates(Stream.of("4/9/2025", "13/9/2025", "9/14/2025")).mixture());
        assertEquals(Optional.empty(), new SheetDates(Stream.of("13/13/2025", "9/14/2025")).mixture());
    }

    /** Neither many spaces nor many digits take long. */
    @Test
    @Timeout(5)
    void longTextsAreNoNumbers() {
        for (String text : List.of("1" + " ".repeat(400) + "(", "1" + " ".repeat(30_000) + "(", "1 ".repeat(15_000) + "(", "1.234".repeat(6_000))) {
            assertTrue(SheetNumber.of(text, NumberStyle.POINT).isEmpty());
            assertEquals(NumberStyle.POINT, NumberStyle.of(List.of(text)));
        }
        assertTrue(SheetNumber.of("1" + " ".repeat(62) + "(", NumberStyle.POINT).isEmpty());
    }

    @Test
    void noGroupOfThousandsBeginsWithZero() {
        for (String text : List.of("0,950", "0,052", "-0,970", "00,950")) {
            assertTrue(SheetNumber.of(text, NumberStyle.POINT).isEmpty(), text);
        }
        assertTrue(SheetNumber.of("0.950", NumberStyle.COMMA).isEmpty());
        assertEquals(NumberStyle.COMMA, NumberStyle.of(List.of("3,657", "0,970")));
        assertEquals(NumberStyle.POINT, NumberStyle.of(List.of("3.657", "0.970")));
        assertRead(0.95, "", "0,950", NumberStyle.COMMA);
        assertRead(1_950, "", "1,950", NumberStyle.POINT);
    }

    @Test
    void aDayAboveTwelveTellsTheOrder() {
        assertEquals("2025-09-04", new SheetDates(Stream.of("4/9/2025", "13/9/2025")).of("4/9/2025").orElseThrow().toString());
        assertEquals(Optional.of("with the day first, as “13/9/2025” shows"), new SheetDates(Stream.of("4/9/2025", "13/9/2025")).order());
        assertEquals(Optional.of("with the month first, as “9/13/2025” shows"), new SheetDates(Stream.of("4/9/2025", "9/13/2025")).order());
        assertEquals(Optional.of("with the month first; none shows which comes first"), new SheetDates(Stream.of("4/9/2025", "5/9/2025")).order());
        assertEquals(Optional.of("with the day first, because points part them"), new SheetDates(Stream.of("4.9.2025")).order());
        assertEquals(Optional.empty(), new SheetDates(Stream.of("9/9/2025", "9/13/2025", "2025-09-04")).order());
        assertTrue(new SheetDates(Stream.of("2/30/2025")).of("2/30/2025").isEmpty());
        assertTrue(new SheetDates(Stream.of("12")).of("12").isEmpty());
    }

    private static void assertRead(double value, String unit, String text, NumberStyle style) {
        SheetNumber read = SheetNumber.of(text, style).orElseThrow();
        assertEquals(value, read.value());
        assertEquals(unit, read.unit());
        assertEquals(text.matches(".*([$€£]|[A-Z]{3} ?[\\d.,]).*"), read.isMoney(), text);
    }
}
