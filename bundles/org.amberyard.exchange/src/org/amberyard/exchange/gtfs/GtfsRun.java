package org.amberyard.exchange.gtfs;

/**
 * A run of a block.
 *
 * @param name departure and route
 * @param startS departure, seconds after the service day began
 * @param endS arrival at the last stop, seconds after the service day began
 * @param km length, km
 * @param stops stops for riders
 * @param dwellS mean standing time at stops that the schedule tells, s; 0 when it tells none
 * @param trip trip_id of the first trip, or of that before a way
 * @param isWay true for a way without riders between trips, which is assumed
 */
record GtfsRun(String name, int startS, int endS, double km, int stops, double dwellS, String trip, boolean isWay) {

    /** This run and another after it without a break: the stand between them counts as driven slowly. */
    GtfsRun joined(GtfsRun next) {
        int both = stops + next.stops;
        return new GtfsRun(name, startS, next.endS, km + next.km, both, (dwellS * stops + next.dwellS * next.stops) / Math.max(1, both),
                trip, isWay && next.isWay);
    }

    /** This run on a day that began some seconds later. */
    GtfsRun earlier(int seconds) {
        return new GtfsRun(name, startS - seconds, endS - seconds, km, stops, dwellS, trip, isWay);
    }
}
