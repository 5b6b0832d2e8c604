package org.amberyard.core.duty;

import java.util.List;
import java.util.Optional;

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
 * @param extendedYear true for a run of the extended-year programme, whose days are not school days
 * @param daysByMonth days of service from January to December
 * @param trace measured drive or drive schedule to follow, if there is one
 */
public record RunInput(String name, double departureMin, double durationMin, double distanceKm, int stops, double dwellS,
        double meanRiders, double topSpeedKmh, double climbM, boolean yardAfter, boolean extendedYear,
        List<Integer> daysByMonth, Optional<SpeedTrace> trace) {

    public RunInput {
        daysByMonth = List.copyOf(daysByMonth);
    }
}
