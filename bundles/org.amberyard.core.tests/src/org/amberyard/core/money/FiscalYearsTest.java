package org.amberyard.core.money;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class FiscalYearsTest {

    /** As most school districts and states of the United States count; the federal government's start in October. */
    @Test
    void yearsThatStartInJulyBearTheNumberOfTheYearInWhichTheyEnd() {
        FiscalYears july = new FiscalYears(7, true);
        assertEquals(LocalDate.of(2025, 7, 1), july.start(2026));
        assertEquals(2026, july.of(LocalDate.of(2026, 6, 30)));
        assertEquals(2027, july.of(LocalDate.of(2026, 7, 1)));
        assertEquals("FY2026", july.name(2026));
        assertEquals("1 July 2025", july.startInWords(2026));
        assertEquals(2025, july.calendarYear(2026, 6));
        assertEquals(2026, july.calendarYear(2026, 5));
    }

    @Test
    void calendarYearsAreThemselves() {
        assertEquals("2026", FiscalYears.CALENDAR.name(2026));
        assertEquals(LocalDate.of(2026, 1, 1), FiscalYears.CALENDAR.start(2026));
        assertEquals(2026, FiscalYears.CALENDAR.calendarYear(2026, 11));
        assertThrows(IllegalArgumentException.class, () -> new FiscalYears(13, true));
    }

    @Property
    void everyDayLiesInTheYearThatHoldsIt(@ForAll @IntRange(min = 1, max = 12) int month, @ForAll boolean byEnd,
            @ForAll @IntRange(min = 0, max = 20_000) int day) {
        FiscalYears years = new FiscalYears(month, byEnd);
        LocalDate date = LocalDate.of(2000, 1, 1).plusDays(day);
        int number = years.of(date);
        assertTrue(!date.isBefore(years.start(number)) && date.isBefore(years.start(number + 1)));
        assertEquals(date.getYear(), years.calendarYear(number, date.getMonthValue() - 1));
    }
}
