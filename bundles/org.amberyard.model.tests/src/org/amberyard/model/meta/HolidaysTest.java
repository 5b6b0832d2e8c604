package org.amberyard.model.meta;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HolidaysTest {

    /** Federal holidays of 2026 by the calendar. */
    @Test
    void datesAndRulesBecomeDates() {
        Set<LocalDate> dates = Holidays.parse("1 Jan; last Mon May; 4 July; 1st Mon Sep; 4th Thursday nov; 25 Dec").of(2026);
        assertEquals(List.of(LocalDate.of(2026, 1, 1), LocalDate.of(2026, 5, 25), LocalDate.of(2026, 7, 4), LocalDate.of(2026, 9, 7),
                LocalDate.of(2026, 11, 26), LocalDate.of(2026, 12, 25)), List.copyOf(dates));
    }

    @Test
    void aLeapDayFallsOnTheLastOfFebruary() {
        assertEquals(Set.of(LocalDate.of(2027, 2, 28)), Holidays.parse("29 Feb").of(2027));
        assertEquals(Set.of(LocalDate.of(2028, 2, 29)), Holidays.parse("29 Feb").of(2028));
    }

    @Test
    void nothingIsNoHoliday() {
        assertEquals(Set.of(), Holidays.parse(null).of(2026));
        assertEquals(Set.of(), Holidays.parse(" ; ").of(2026));
    }

    @ParameterizedTest
    @ValueSource(strings = {"July 4", "0 Jan", "31 Nov", "5th Mon May", "4th Xyz Nov", "Easter"})
    void whatIsNotUnderstoodIsNamed(String part) {
        String message = assertThrows(IllegalArgumentException.class, () -> Holidays.parse("1 Jan; " + part)).getMessage();
        assertEquals("“" + part + "” is no date such as 4 Jul and no rule such as 4th Thu Nov or last Mon May", message);
    }
}
