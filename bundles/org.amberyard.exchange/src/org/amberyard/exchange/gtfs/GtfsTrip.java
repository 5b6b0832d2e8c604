package org.amberyard.exchange.gtfs;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A trip that is wanted, and its stops as they are read. */
final class GtfsTrip {
    private final String id;
    private final String block;
    private final String route;
    private final String shape;
    private final boolean blocked;
    private final int row;
    private final List<GtfsStopTime> stops = new ArrayList<>();

    /**
     * @param route name of the route
     * @param shape id of the shape; blank when it has none
     * @param blocked true when the schedule says in which block the trip is
     * @param row row in trips.txt
     */
    GtfsTrip(String id, String block, String route, String shape, boolean blocked, int row) {
        this.id = id;
        this.block = block;
        this.route = route;
        this.shape = shape;
        this.blocked = blocked;
        this.row = row;
    }

    /** The same trip at another time, of which nobody says which bus drives it. */
    GtfsTrip departingAt(int startS) {
        GtfsTrip other = new GtfsTrip(id, block, route, shape, false, row);
        int laterS = startS - startS();
        stops.forEach(s -> other.add(s.later(laterS)));
        return other;
    }

    void add(GtfsStopTime stop) {
        stops.add(stop);
    }

    void sort() {
        stops.sort(Comparator.comparingInt(GtfsStopTime::sequence));
    }

    String id() {
        return id;
    }

    String block() {
        return block;
    }

    String route() {
        return route;
    }

    String shape() {
        return shape;
    }

    boolean isBlocked() {
        return blocked;
    }

    int row() {
        return row;
    }

    /** Stops in the order of the trip, once sorted. */
    List<GtfsStopTime> stops() {
        return stops;
    }

    GtfsStopTime first() {
        return stops.get(0);
    }

    GtfsStopTime last() {
        return stops.get(stops.size() - 1);
    }

    /** Departure from the first stop, seconds after the service day began. */
    int startS() {
        return first().departureS().orElse(first().arrivalS().orElse(0));
    }

    /** Arrival at the last stop, seconds after the service day began. */
    int endS() {
        return last().arrivalS().orElse(last().departureS().orElse(0));
    }
}
