package org.amberyard.core.plan;

import java.util.Optional;

/**
 * What is known of the years of a present bus before the base date. What is empty follows from its age and odometer.
 *
 * @param pack its pack as it stands at the base date
 * @param used how it was when the fleet bought it used; empty for a bus bought new
 * @param tasks when its shop tasks were last known to be done as they fall due
 */
public record BusRecord(Optional<Vehicle.Pack> pack, Optional<Vehicle.Used> used, Optional<TasksSince> tasks) {

    /** Nothing is known but age and odometer. */
    public static final BusRecord NONE = new BusRecord(Optional.empty(), Optional.empty(), Optional.empty());

    /**
     * A year from which on tasks are counted, as its place drives the bus.
     *
     * @param year year, counted from the base year; not above zero
     * @param odometerKm odometer at its start, km
     */
    public record TasksSince(int year, double odometerKm) {
    }
}
