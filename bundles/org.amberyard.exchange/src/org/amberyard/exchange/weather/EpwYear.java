package org.amberyard.exchange.weather;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * The weather of an EPW file, day by day.
 *
 * @param file name of the file
 * @param place where it was measured
 * @param perDay records of a whole day
 * @param startDay day of the week on which the file says that its data start
 * @param holidays holidays of the file
 * @param otherHolidays holidays whose day is told in a way that is not understood
 * @param order dates as they follow each other in the file
 * @param days days by date
 */
record EpwYear(String file, EpwLocation place, int perDay, Optional<DayOfWeek> startDay, Set<MonthDay> holidays,
        List<String> otherHolidays, List<LocalDate> order, List<EpwDay> days) {
    /** A day counts with at least this share of its records. */
    private static final double LEAST_SHARE = 0.85;
    /** Fewer days tell no month. */
    private static final int LEAST_DAYS = 20;

    EpwYear {
        order = List.copyOf(order);
        days = List.copyOf(days);
    }

    /** Days of a month that were measured nearly whole. */
    List<EpwDay> days(Month month) {
        return days.stream().filter(d -> d.date().getMonth() == month && isWhole(d)).toList();
    }

    private boolean isWhole(EpwDay day) {
        return day.airs() >= LEAST_SHARE * perDay;
    }

    /** Days with records that are too few to count. */
    long holed() {
        return days.stream().filter(d -> !isWhole(d)).count();
    }

    /** True when a month has days enough. */
    boolean tells(Month month) {
        return days(month).size() >= LEAST_DAYS;
    }

    /**
     * True when the file is a stretch of real time, whose days of the week mean something: its dates follow each other, and it
     * starts on the day of the week that it says. Typical years are put together of months of several years.
     */
    boolean isReal() {
        boolean running = IntStream.range(1, order.size()).allMatch(i -> order.get(i - 1).plusDays(1).equals(order.get(i)));
        return running && startDay.filter(d -> d == order.get(0).getDayOfWeek()).isPresent();
    }

    /** True when buses may have run on a day: in a real year Monday to Friday without holidays, else any. */
    boolean isOperated(EpwDay day) {
        boolean weekend = day.date().getDayOfWeek() == DayOfWeek.SATURDAY || day.date().getDayOfWeek() == DayOfWeek.SUNDAY;
        return !isReal() || !weekend && !holidays.contains(MonthDay.from(day.date()));
    }

    /** Records of a day that tell the sun, as a share. */
    double sunShareTold(Month month) {
        return days(month).stream().mapToInt(EpwDay::suns).sum() / (double) (perDay * days(month).size());
    }
}
