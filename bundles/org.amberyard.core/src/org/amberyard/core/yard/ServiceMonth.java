package org.amberyard.core.yard;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/**
 * How often each stretch of days stands in a month of service: a week has five service days and ends with a weekend; one day is
 * the month's coldest, one its hottest and one its busiest with trips where there are enough.
 *
 * @param month month, 0 for January
 * @param extendedYear true for the extended-year programme, false for school
 * @param days service days of the month
 * @param times how often each stretch stands in the month; those that do not are left out
 */
public record ServiceMonth(int month, boolean extendedYear, int days, Map<StretchKind, Double> times) {
    private static final double SERVICE_DAYS_OF_WEEK = 5;
    private static final int LEAST_FOR_COLDEST = 2;
    private static final int LEAST_FOR_BOTH = 3;
    private static final int LEAST_FOR_TRIPS = 4;
    private static final StretchKind[] KINDS = StretchKind.values();

    public ServiceMonth {
        Map<StretchKind, Double> standing = new EnumMap<>(StretchKind.class);
        standing.putAll(times);
        times = Collections.unmodifiableMap(standing);
    }

    /** Without going through the entries of both maps, which takes long for what is asked so often. */
    @Override
    public boolean equals(Object other) {
        return this == other || other instanceof ServiceMonth o && month == o.month && extendedYear == o.extendedYear && days == o.days
                && sameTimes(o);
    }

    private boolean sameTimes(ServiceMonth other) {
        for (StretchKind kind : KINDS) {
            if (!Objects.equals(times.get(kind), other.times.get(kind))) {
                return false;
            }
        }
        return true;
    }

    @Override
    public int hashCode() {
        return Objects.hash(month, extendedYear, days);
    }

    /**
     * A month of service.
     *
     * @param weekends weekends that the service may take, no more than stand in the month
     * @param trips true when buses that charge here drive trips in it
     */
    static ServiceMonth of(int month, boolean extendedYear, int days, double weekends, boolean trips) {
        Map<StretchKind, Double> times = new EnumMap<>(StretchKind.class);
        double rest = days;
        rest -= put(times, StretchKind.COLDEST_DAY, days >= LEAST_FOR_COLDEST ? 1 : 0);
        rest -= put(times, StretchKind.HOTTEST_DAY, days >= LEAST_FOR_BOTH ? 1 : 0);
        rest -= put(times, StretchKind.TRIP_DAY, trips && days >= LEAST_FOR_TRIPS ? 1 : 0);
        rest -= put(times, StretchKind.BEFORE_WEEKEND, Math.min(weekends, days / SERVICE_DAYS_OF_WEEK));
        put(times, StretchKind.SERVICE_DAY, rest);
        return new ServiceMonth(month, extendedYear, days, times);
    }

    private static double put(Map<StretchKind, Double> times, StretchKind kind, double count) {
        if (count > 0) {
            times.put(kind, count);
        }
        return count;
    }

    /** Weekends that follow its stretches. */
    double weekends() {
        return times.getOrDefault(StretchKind.BEFORE_WEEKEND, 0.0);
    }

    /** Days whose weather is extreme. */
    double extremeDays() {
        return times.entrySet().stream().filter(e -> e.getKey().extreme()).mapToDouble(Map.Entry::getValue).sum();
    }
}
