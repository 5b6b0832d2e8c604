package org.amberyard.exchange.gtfs;

import java.util.OptionalInt;

/**
 * When a trip is at a stop.
 *
 * @param sequence place in the trip
 * @param stop id of the stop
 * @param arrivalS arrival, seconds after the service day began; empty where it is not told
 * @param departureS departure likewise
 * @param traveled distance along the trip in a unit that the schedule does not say; not a number where it is not told
 * @param served true when riders may get on or off
 * @param row row in stop_times.txt
 */
record GtfsStopTime(int sequence, String stop, OptionalInt arrivalS, OptionalInt departureS, double traveled, boolean served,
        int row) {

    /** The same so many seconds later. */
    GtfsStopTime later(int seconds) {
        return new GtfsStopTime(sequence, stop, later(arrivalS, seconds), later(departureS, seconds), traveled, served, row);
    }

    private static OptionalInt later(OptionalInt time, int seconds) {
        return time.isPresent() ? OptionalInt.of(time.getAsInt() + seconds) : time;
    }
}
