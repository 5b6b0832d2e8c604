package org.amberyard.core.yard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.amberyard.core.tariff.DayClass;
import org.junit.jupiter.api.Test;

class YardCalendarTest {
    private static final List<Map<DayClass, Integer>> DAYS = Collections.nCopies(12,
            Map.of(DayClass.WEEKDAY, 21, DayClass.SATURDAY, 4, DayClass.SUNDAY, 4, DayClass.HOLIDAY, 1));

    private static ServiceDays service(int school, int extendedYear) {
        return new ServiceDays(Collections.nCopies(12, school), Collections.nCopies(12, extendedYear));
    }

    @Test
    void aWeekHasFiveServiceDaysAndAWeekend() {
        ServiceMonth month = YardCalendar.of(service(15, 0), DAYS).in(0).get(0);
        assertEquals(Map.of(StretchKind.COLDEST_DAY, 1.0, StretchKind.HOTTEST_DAY, 1.0, StretchKind.BEFORE_WEEKEND, 3.0,
                StretchKind.SERVICE_DAY, 10.0), month.times());
    }

    @Test
    void whatNoStretchHoldsIsIdle() {
        assertEquals(Map.of(DayClass.WEEKDAY, 6.0, DayClass.SATURDAY, 1.0, DayClass.SUNDAY, 1.0, DayClass.HOLIDAY, 1.0),
                YardCalendar.of(service(15, 0), DAYS).idle().get(3));
    }

    /** February 2026 has twenty weekdays; two further service days fall on Saturdays. */
    @Test
    void aMonthIsNoLongerWhenMoreDaysAreServedThanItHasWeekdays() {
        List<Map<DayClass, Integer>> february = Collections.nCopies(12,
                Map.of(DayClass.WEEKDAY, 20, DayClass.SATURDAY, 4, DayClass.SUNDAY, 4, DayClass.HOLIDAY, 0));
        YardCalendar calendar = YardCalendar.of(service(22, 0), february);
        assertEquals(28, days(calendar, 1), 1e-9);
        assertEquals(2, calendar.in(1).get(0).weekends(), 1e-9);
    }

    @Test
    void schoolsThatServeOnAHolidayOfTheTariffTakeItFromTheMonth() {
        YardCalendar calendar = YardCalendar.of(service(22, 0), DAYS);
        assertEquals(30, days(calendar, 0), 1e-9);
        assertEquals(Map.of(), calendar.idle().get(0));
    }

    private static double days(YardCalendar calendar, int month) {
        return calendar.idle().get(month).values().stream().mapToDouble(Double::doubleValue).sum()
                + calendar.in(month).stream().flatMap(m -> m.times().entrySet().stream())
                        .mapToDouble(e -> e.getValue() * e.getKey().days().size()).sum();
    }

    @Test
    void aSingleDayIsANormalOne() {
        ServiceMonth month = YardCalendar.of(service(1, 0), DAYS).in(0).get(0);
        assertEquals(0, month.extremeDays());
        assertEquals(1, month.times().values().stream().mapToDouble(Double::doubleValue).sum(), 1e-12);
    }

    @Test
    void aYardWithoutRoutesDrivesOnWeekdays() {
        assertEquals(240, YardCalendar.of(service(0, 0), DAYS).serviceDays(), 0);
    }

    @Property
    void noDayIsLost(@ForAll @IntRange(min = 0, max = 24) int school, @ForAll @IntRange(min = 0, max = 6) int extendedYear) {
        YardCalendar calendar = YardCalendar.of(service(school, extendedYear), DAYS);
        for (int month = 0; month < 12; month++) {
            assertTrue(calendar.in(month).stream().flatMap(m -> m.times().values().stream()).allMatch(t -> t > 0));
            assertEquals(30, days(calendar, month), 1e-9);
        }
    }
}
