package org.amberyard.core.tariff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.time.Year;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class BillingCalendarTest {

    private static Map<DayClass, Integer> days(int weekdays, int saturdays, int sundays, int holidays) {
        return Map.of(DayClass.WEEKDAY, weekdays, DayClass.SATURDAY, saturdays, DayClass.SUNDAY, sundays, DayClass.HOLIDAY,
                holidays);
    }

    /** 2027 starts on a Friday; Independence Day is a Sunday and kept on Monday, 5 July. */
    @Test
    void monthsByTheWallCalendar() {
        BillingCalendar calendar = new BillingCalendar(2027, HolidayRule.USUAL_IN_US);
        assertEquals(days(20, 5, 5, 1), calendar.days(0));
        assertEquals(days(20, 4, 4, 0), calendar.days(1));
        assertEquals(days(21, 5, 4, 1), calendar.days(6));
        assertEquals(DayClass.SUNDAY, calendar.dayClass(LocalDate.of(2027, 7, 4)));
        assertEquals(DayClass.HOLIDAY, calendar.dayClass(LocalDate.of(2027, 7, 5)));
    }

    @Test
    void aHolidayOfNextYearCanBeKeptInThis() {
        List<HolidayRule> newYear = List.of(
                new HolidayRule.OnDate("New Year's Day", MonthDay.of(1, 1), Observance.NEAREST_WEEKDAY));
        assertEquals(DayClass.HOLIDAY, new BillingCalendar(2027, newYear).dayClass(LocalDate.of(2027, 12, 31)));
        assertEquals(DayClass.SATURDAY, new BillingCalendar(2028, newYear).dayClass(LocalDate.of(2028, 1, 1)));
    }

    @Test
    void aFifthWeekdayIsRefused() {
        Exception refused = assertThrows(IllegalArgumentException.class,
                () -> new HolidayRule.OnWeekday("Town day", Month.MAY, DayOfWeek.MONDAY, 5));
        assertEquals("Town day is weekday number 5 of its month but must be 1 to 4, or -1 for the last", refused.getMessage());
    }

    @Test
    void aDayOfAnotherYearIsRefused() {
        BillingCalendar calendar = new BillingCalendar(2027, List.of());
        assertThrows(IllegalArgumentException.class, () -> calendar.dayClass(LocalDate.of(2028, 1, 1)));
    }

    @Property(tries = 100)
    void daysAddUpToTheYear(@ForAll @IntRange(min = 1990, max = 2090) int year) {
        BillingCalendar calendar = new BillingCalendar(year, HolidayRule.USUAL_IN_US);
        int days = IntStream.range(0, 12).flatMap(m -> calendar.days(m).values().stream().mapToInt(d -> d)).sum();
        int holidays = IntStream.range(0, 12).map(m -> calendar.days(m).get(DayClass.HOLIDAY)).sum();
        assertEquals(Year.of(year).length(), days);
        assertEquals(6, holidays);
    }
}
