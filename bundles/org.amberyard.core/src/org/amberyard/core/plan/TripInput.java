package org.amberyard.core.plan;

import java.time.LocalDate;
import java.util.OptionalInt;

/**
 * A field or athletic trip: what the yard drives beside its routes. It is asked who can cover the trip; its distance is part
 * of the other distance of the buses and is not added to it again.
 *
 * @param name name
 * @param kind what the trip is for, in words
 * @param date day of the trip in a year that stands for all years
 * @param day what the routes do on that day
 * @param departureMin departure from the yard, minutes after midnight
 * @param hours time away from the yard, h
 * @param km distance there and back, km
 * @param bodyType body type that the riders need, by its trade letter
 * @param seats seats that the riders need; not compared with buses, whose seats are not known, but taken as the riders' mass
 * @param stopsEachWay stops on the way out, and again on the way back
 * @param assigned place in the list of buses of the bus that drives it today, if there is one
 */
public record TripInput(String name, String kind, LocalDate date, ServiceDay day, double departureMin, double hours,
        double km, String bodyType, int seats, int stopsEachWay, OptionalInt assigned) {

    /** Month of the trip, 0 for January. */
    public int month() {
        return date.getMonthValue() - 1;
    }

    /** Return to the yard, minutes after midnight of the trip's day; beyond 1,440 on the next. */
    public double returnMin() {
        return departureMin + hours * 60;
    }
}
