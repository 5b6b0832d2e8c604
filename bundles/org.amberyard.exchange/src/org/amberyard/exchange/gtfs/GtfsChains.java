package org.amberyard.exchange.gtfs;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Joins trips of a route of which the schedule does not say which bus drives them: a bus goes on with the next trip that starts
 * near where its last one ended, the one that has waited least before those that have waited longer. Common practice in
 * estimating vehicles from timetables, no source.
 */
final class GtfsChains {
    private static final int LONGEST_WAIT_S = 2 * 3600;

    private final GtfsDistances distances;

    GtfsChains(GtfsDistances distances) {
        this.distances = distances;
    }

    /** The trips of a route by bus: each list is what one bus drives. */
    List<List<GtfsTrip>> of(List<GtfsTrip> trips) {
        List<GtfsTrip> ordered = new ArrayList<>(trips);
        ordered.sort(Comparator.comparingInt(GtfsTrip::startS).thenComparing(GtfsTrip::id));
        List<List<GtfsTrip>> buses = new ArrayList<>();
        for (GtfsTrip trip : ordered) {
            waiting(buses, trip).orElseGet(() -> {
                List<GtfsTrip> bus = new ArrayList<>();
                buses.add(bus);
                return bus;
            }).add(trip);
        }
        return buses;
    }

    private Optional<List<GtfsTrip>> waiting(List<List<GtfsTrip>> buses, GtfsTrip trip) {
        return buses.stream().filter(b -> canGoOn(last(b), trip)).max(Comparator.comparingInt(b -> last(b).endS()));
    }

    private static GtfsTrip last(List<GtfsTrip> bus) {
        return bus.get(bus.size() - 1);
    }

    private boolean canGoOn(GtfsTrip done, GtfsTrip next) {
        int waitS = next.startS() - done.endS();
        return waitS >= 0 && waitS <= LONGEST_WAIT_S && distances.betweenKm(done, next) <= GtfsWays.NEAR_KM;
    }
}
