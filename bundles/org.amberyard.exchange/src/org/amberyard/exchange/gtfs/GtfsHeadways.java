package org.amberyard.exchange.gtfs;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/**
 * Trips that frequencies.txt repeats by headway: from a start on, every so many seconds, before an end. The times of such a trip in
 * stop_times.txt only tell how long it takes (General Transit Feed Specification Reference, revised Nov 16, 2023, under frequencies.txt).
 */
final class GtfsHeadways {
    private static final int LONGEST_S = 6 * 3600;

    private final Map<String, List<Headway>> byTrip = new LinkedHashMap<>();
    private int departures;
    private int notExact;

    /** A headway between two times, seconds after the service day began. */
    private record Headway(int startS, int endS, int everyS, boolean exact) {
    }

    /** Takes a row of the file for a trip that is wanted. */
    void take(GtfsRow row) {
        OptionalInt start = row.timeS("start_time");
        OptionalInt end = row.timeS("end_time");
        int everyS = row.whole("headway_secs", 1, LONGEST_S);
        boolean exact = !row.text("exact_times").isEmpty() && row.whole("exact_times", 0, 1) == 1;
        if (start.isEmpty() || end.isEmpty()) {
            row.refuse(start.isEmpty() ? "start_time" : "end_time", "A time is missing; a headway needs a start and an end.");
        } else if (end.getAsInt() <= start.getAsInt()) {
            row.refuse("end_time", "The headway ends before it starts.");
        } else {
            byTrip.computeIfAbsent(row.text("trip_id"), t -> new ArrayList<>()).add(new Headway(start.getAsInt(), end.getAsInt(), everyS, exact));
        }
    }

    /**
     * The departures of a trip; the trip itself where no headway repeats it.
     *
     * @param most no more than so many are made
     */
    List<GtfsTrip> departures(GtfsTrip trip, int most) {
        List<Headway> headways = byTrip.get(trip.id());
        if (headways == null) {
            return List.of(trip);
        }
        Map<Integer, GtfsTrip> departing = new LinkedHashMap<>();
        for (Headway headway : headways) {
            for (int s = headway.startS(); s < headway.endS() && departing.size() < most; s += headway.everyS()) {
                if (departing.putIfAbsent(s, trip.departingAt(s)) == null && !headway.exact()) {
                    notExact++;
                }
            }
        }
        departures += departing.size();
        return List.copyOf(departing.values());
    }

    /** Trips that are repeated. */
    int trips() {
        return byTrip.size();
    }

    /** Departures that they make. */
    int departures() {
        return departures;
    }

    /** Those of them that the schedule does not promise to the minute. */
    int notExact() {
        return notExact;
    }
}
