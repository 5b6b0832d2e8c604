package org.amberyard.core.yard;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.tariff.DayClass;

/**
 * Days of a year as the yard's meter sees them. Service days that find no weekday left, as when schools keep a holiday of the
 * tariff for service, take holidays and then free days of the week from the month; they are billed as weekdays.
 *
 * @param months months of service, school and the extended-year programme apart
 * @param idle days of each month on which no route is driven and which no stretch holds, by kind of day
 */
public record YardCalendar(List<ServiceMonth> months, List<Map<DayClass, Double>> idle) {
    private static final List<Boolean> SERVICES = List.of(false, true);
    private static final List<DayClass> SERVED_FIRST = List.of(DayClass.WEEKDAY, DayClass.HOLIDAY, DayClass.SATURDAY,
            DayClass.SUNDAY);
    private static final int WITHOUT_ROUTES_DAYS = 20;

    public YardCalendar {
        months = List.copyOf(months);
        idle = List.copyOf(idle);
    }

    /**
     * The calendar of a year.
     *
     * @param service days on which routes are driven; a yard without any drives on twenty weekdays of each month (common
     *            practice, no source)
     * @param days kinds of days of each month, as many as stand in the calendar
     */
    public static YardCalendar of(ServiceDays service, List<Map<DayClass, Integer>> days) {
        return of(service, days, Set.of());
    }

    /** The calendar of a year with the months in which buses drive trips. */
    public static YardCalendar of(ServiceDays service, List<Map<DayClass, Integer>> days, Set<TripDay.Month> trips) {
        ServiceDays driven = service.total() > 0 ? service : new ServiceDays(
                Collections.nCopies(Climate.MONTHS, WITHOUT_ROUTES_DAYS), Collections.nCopies(Climate.MONTHS, 0));
        List<ServiceMonth> months = new ArrayList<>();
        List<Map<DayClass, Double>> idle = new ArrayList<>();
        for (int month = 0; month < Climate.MONTHS; month++) {
            idle.add(addMonth(month, driven, days.get(month), trips, months));
        }
        return new YardCalendar(months, idle);
    }

    private static Map<DayClass, Double> addMonth(int month, ServiceDays driven, Map<DayClass, Integer> days,
            Set<TripDay.Month> trips, List<ServiceMonth> months) {
        Map<DayClass, Double> idle = new EnumMap<>(DayClass.class);
        days.forEach((kind, count) -> idle.put(kind, (double) count));
        takeService(idle, SERVICES.stream().mapToInt(extendedYear -> driven.of(month, extendedYear)).sum());
        for (boolean extendedYear : SERVICES) {
            int count = driven.of(month, extendedYear);
            if (count > 0) {
                double weekends = Math.min(idle.getOrDefault(DayClass.SATURDAY, 0.0), idle.getOrDefault(DayClass.SUNDAY, 0.0));
                boolean tripDay = trips.contains(new TripDay.Month(month, extendedYear));
                ServiceMonth added = ServiceMonth.of(month, extendedYear, count, weekends, tripDay);
                months.add(added);
                take(idle, DayClass.SATURDAY, added.weekends());
                take(idle, DayClass.SUNDAY, added.weekends());
            }
        }
        idle.values().removeIf(left -> left <= 0);
        return idle;
    }

    private static void takeService(Map<DayClass, Double> idle, double count) {
        double rest = count;
        for (DayClass kind : SERVED_FIRST) {
            double taken = Math.min(rest, idle.getOrDefault(kind, 0.0));
            take(idle, kind, taken);
            rest -= taken;
        }
    }

    private static void take(Map<DayClass, Double> idle, DayClass kind, double count) {
        idle.merge(kind, -count, Double::sum);
    }

    /** Service days of the year. */
    public double serviceDays() {
        return months.stream().mapToDouble(ServiceMonth::days).sum();
    }

    /** Months of service in a month. */
    public List<ServiceMonth> in(int month) {
        return months.stream().filter(m -> m.month() == month).toList();
    }
}
