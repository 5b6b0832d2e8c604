package org.amberyard.exchange.gtfs;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Days of a schedule that are alike: on all of them the same services run, so that a vehicle's block is the same.
 *
 * @param name days of the week, such as Mon-Fri; with a number where several kinds of days have the same
 * @param dates dates in order, of twelve months at most
 */
public record GtfsDays(String name, List<LocalDate> dates) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);
    private static final Set<DayOfWeek> WEEKDAYS = EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY);

    public GtfsDays {
        dates = List.copyOf(dates);
    }

    /** Kinds of days with names of their own, that of most days first. */
    static List<GtfsDays> named(List<List<LocalDate>> kinds) {
        List<List<LocalDate>> ordered = new ArrayList<>(kinds);
        ordered.sort(Comparator.comparingInt((List<LocalDate> k) -> -k.size()).thenComparing(k -> k.get(0)));
        Map<String, Integer> taken = new HashMap<>();
        List<GtfsDays> named = new ArrayList<>();
        for (List<LocalDate> dates : ordered) {
            String name = weekdays(dates);
            int number = taken.merge(name, 1, Integer::sum);
            named.add(new GtfsDays(number == 1 ? name : name + " " + number, dates));
        }
        return named;
    }

    /** A date of the kind. */
    LocalDate sample() {
        return dates.get(0);
    }

    private static String weekdays(List<LocalDate> dates) {
        EnumSet<DayOfWeek> days = dates.stream().map(LocalDate::getDayOfWeek)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(DayOfWeek.class)));
        return days.equals(WEEKDAYS) ? "Mon-Fri" : days.size() == DayOfWeek.values().length ? "Daily"
                : days.stream().map(d -> d.getDisplayName(TextStyle.SHORT, Locale.ENGLISH)).collect(Collectors.joining("+"));
    }

    /** Name, number and span of the days. */
    public String words() {
        return name + ", " + dates.size() + (dates.size() == 1 ? " day" : " days") + " from " + DAY.format(dates.get(0)) + " to "
                + DAY.format(dates.get(dates.size() - 1));
    }

    /** Days in a month, 1 to 12. */
    int in(int month) {
        return (int) dates.stream().filter(d -> d.getMonthValue() == month).count();
    }
}
