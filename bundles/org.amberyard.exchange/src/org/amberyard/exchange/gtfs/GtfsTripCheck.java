package org.amberyard.exchange.gtfs;

import org.amberyard.exchange.ProblemList;

/** A trip has two stops at least, each place once, times at its ends, and times that do not run back. */
final class GtfsTripCheck {
    static final String STOP_TIMES = "stop_times.txt";

    private final ProblemList problems;

    GtfsTripCheck(ProblemList problems) {
        this.problems = problems;
    }

    /** Puts the stops of a trip in order, and tells what is wrong with them. */
    void check(GtfsTrip trip) {
        trip.sort();
        if (trip.stops().size() < 2) {
            problems.add(GtfsFeed.TRIPS, trip.row(), "trip_id", "The trip “" + trip.id() + "” has " + trip.stops().size()
                    + " stops in stop_times.txt; it needs two or more.");
            return;
        }
        checkEnd(trip.first(), "departure_time");
        checkEnd(trip.last(), "arrival_time");
        int reachedS = trip.startS();
        for (int i = 1; i < trip.stops().size(); i++) {
            reachedS = check(trip, i, reachedS);
        }
    }

    private void checkEnd(GtfsStopTime stop, String column) {
        if (stop.arrivalS().isEmpty() && stop.departureS().isEmpty()) {
            problems.add(STOP_TIMES, stop.row(), column, "The first and the last stop of a trip must have a time.");
        }
    }

    private int check(GtfsTrip trip, int place, int reachedS) {
        GtfsStopTime stop = trip.stops().get(place);
        if (stop.sequence() == trip.stops().get(place - 1).sequence()) {
            problems.add(STOP_TIMES, stop.row(), "stop_sequence", "The trip “" + trip.id() + "” has the place " + stop.sequence()
                    + " twice.");
        }
        int arrivalS = stop.arrivalS().orElse(reachedS);
        int departureS = stop.departureS().orElse(arrivalS);
        if (arrivalS < reachedS || departureS < arrivalS) {
            problems.add(STOP_TIMES, stop.row(), "arrival_time", "The trip “" + trip.id() + "” is at this stop before it has left the stop "
                    + "before it.");
        }
        return Math.max(reachedS, departureS);
    }
}
