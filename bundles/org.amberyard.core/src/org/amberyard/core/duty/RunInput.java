package org.amberyard.core.duty;

import java.util.List;

/**
 * One scheduled run of a route's bus.
 *
 * @param name short name
 * @param departureMin departure, minutes after midnight
 * @param durationMin scheduled time, min
 * @param distanceKm distance, km
 * @param stops stops for riders
 * @param dwellS least time standing at each stop, s
 * @param meanRiders riders on board, averaged over the distance
 * @param topSpeedKmh cruising speed that the roads allow, km/h
 * @param climbM total climb, m; descended again within the run
 * @param yardAfter true when the bus stands at the yard until its next run
 * @param daysByMonth days of service from January to December
 */
public record RunInput(String name, double departureMin, double durationMin, double distanceKm, int stops, double dwellS,
        double meanRiders, double topSpeedKmh, double climbM, boolean yardAfter, List<Integer> daysByMonth) {

    public RunInput {
        daysByMonth = List.copyOf(daysByMonth);
    }

    /** Scheduled time in hours. */
    public double hours() {
        return durationMin / 60;
    }

    /** Clock hour at the middle of the run. */
    public double middleHour() {
        return (departureMin + durationMin / 2) / 60;
    }

    /** Days of service in a year. */
    public int daysPerYear() {
        return daysByMonth.stream().mapToInt(Integer::intValue).sum();
    }
}
