package org.amberyard.exchange.gtfs;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.ProblemList;
import org.amberyard.exchange.ReadingProgress;

/** Trips, stops and shapes of the blocks that are wanted; of all others nothing is kept. */
final class GtfsDetails {
    private static final int MOST_TRIPS = 20_000;
    private static final int MOST_STOP_TIMES = 1_500_000;
    private static final int MOST_POINTS = 1_500_000;
    private static final int NOT_SERVED = 1;
    private static final String FREQUENCIES = "frequencies.txt";

    private final GtfsFeed feed;
    private final GtfsChoice choice;
    private final ProblemList problems;
    private final Map<String, GtfsTrip> trips = new LinkedHashMap<>();
    private final Map<String, GtfsPlace> stops = new HashMap<>();
    private final Map<String, List<GtfsPlace>> shapes = new HashMap<>();
    private final GtfsHeadways headways = new GtfsHeadways();
    private List<GtfsTrip> departures = List.of();
    private int stopTimes;
    private int points;

    private GtfsDetails(GtfsFeed feed, GtfsChoice choice) {
        this.feed = feed;
        this.choice = choice;
        this.problems = new ProblemList(feed.path().getFileName().toString());
    }

    static GtfsDetails read(GtfsFeed feed, GtfsChoice choice, ReadingProgress progress) throws ImportException {
        GtfsDetails details = new GtfsDetails(feed, choice);
        try (GtfsFiles files = GtfsFiles.of(feed.path())) {
            details.read(new GtfsTable(files, details.problems, progress));
        } catch (IOException e) {
            throw ProblemList.refusal(feed.path().getFileName().toString(), 0, "", "The schedule cannot be read: " + e.getMessage());
        }
        details.problems.refuseIfAny();
        return details;
    }

    private void read(GtfsTable table) throws ImportException {
        table.readNeeded(GtfsFeed.TRIPS, GtfsFeed.TRIP_COLUMNS, this::takeTrip);
        table.readNeeded(GtfsTripCheck.STOP_TIMES, List.of("trip_id", "arrival_time", "departure_time", "stop_id", "stop_sequence"), this::takeStopTime);
        trips.values().forEach(new GtfsTripCheck(problems)::check);
        table.read(FREQUENCIES, List.of("trip_id", "start_time", "end_time", "headway_secs"), row -> {
            if (trips.containsKey(row.text("trip_id"))) {
                headways.take(row);
            }
        });
        problems.refuseIfAny();
        departures = departures();
        Set<String> wanted = new HashSet<>();
        trips.values().forEach(t -> t.stops().forEach(s -> wanted.add(s.stop())));
        table.readNeeded("stops.txt", List.of("stop_id", "stop_lat", "stop_lon"), row -> takeStop(row, wanted));
        trips.values().forEach(this::checkStops);
        trips.values().stream().map(GtfsTrip::shape).filter(s -> !s.isEmpty()).forEach(s -> shapes.put(s, new ArrayList<>()));
        if (!shapes.isEmpty()) {
            table.read("shapes.txt", List.of("shape_id", "shape_pt_lat", "shape_pt_lon", "shape_pt_sequence"), this::takePoint);
        }
        shapes.values().forEach(s -> s.sort(Comparator.comparingInt(GtfsPlace::sequence)));
    }

    private void takeTrip(GtfsRow row) throws ImportException {
        if (!choice.blocks().contains(feed.block(row)) || !feed.isDriven(row.text("route_id"), row.text("service_id"), choice.days())) {
            return;
        }
        String id = row.needed("trip_id");
        GtfsTrip trip = new GtfsTrip(id, feed.block(row), feed.route(row.text("route_id")), row.text("shape_id"), GtfsFeed.isBlocked(row),
                row.row());
        if (trips.putIfAbsent(id, trip) != null) {
            row.refuse("trip_id", "The trip “" + id + "” stands there twice; keep one row.");
        }
        if (trips.size() > MOST_TRIPS) {
            throw ProblemList.refusal(GtfsFeed.TRIPS, row.row(), "", "More than 20,000 trips were chosen; choose fewer blocks at a time.");
        }
    }

    private void takeStopTime(GtfsRow row) throws ImportException {
        GtfsTrip trip = trips.get(row.text("trip_id"));
        if (trip == null) {
            return;
        }
        if (++stopTimes > MOST_STOP_TIMES) {
            throw ProblemList.refusal(GtfsTripCheck.STOP_TIMES, row.row(), "", "The chosen trips have more than 1,500,000 stops; choose fewer blocks.");
        }
        boolean served = !(isNotServed(row, "pickup_type") && isNotServed(row, "drop_off_type"));
        trip.add(new GtfsStopTime(row.whole("stop_sequence", 0, 999_999_999), row.needed("stop_id"), row.timeS("arrival_time"),
                row.timeS("departure_time"), row.decimalOrNone("shape_dist_traveled"), served, row.row()));
    }

    private static boolean isNotServed(GtfsRow row, String column) {
        return !row.text(column).isEmpty() && row.whole(column, 0, 3) == NOT_SERVED;
    }

    /** What departs in the order of the file, trips that are repeated by headway as often as they are. */
    private List<GtfsTrip> departures() throws ImportException {
        List<GtfsTrip> all = new ArrayList<>();
        for (GtfsTrip trip : trips.values()) {
            all.addAll(headways.departures(trip, MOST_TRIPS + 1));
            if (all.size() > MOST_TRIPS) {
                throw ProblemList.refusal(FREQUENCIES, 0, "", "The chosen trips depart more than 20,000 times a day; choose fewer blocks at a time.");
            }
        }
        return List.copyOf(all);
    }

    private void takeStop(GtfsRow row, Set<String> wanted) {
        String id = row.text("stop_id");
        if (wanted.contains(id)) {
            stops.put(id, GtfsPlace.of(row, "stop_lat", "stop_lon", 0, Double.NaN));
        }
    }

    private void checkStops(GtfsTrip trip) {
        trip.stops().stream().filter(s -> !stops.containsKey(s.stop())).forEach(s -> problems.add(GtfsTripCheck.STOP_TIMES, s.row(), "stop_id",
                "“" + s.stop() + "” is no stop of stops.txt."));
    }

    private void takePoint(GtfsRow row) throws ImportException {
        List<GtfsPlace> shape = shapes.get(row.text("shape_id"));
        if (shape != null) {
            if (++points > MOST_POINTS) {
                throw ProblemList.refusal("shapes.txt", row.row(), "", "The shapes of the chosen trips have more than 1,500,000 points; "
                        + "choose fewer blocks.");
            }
            shape.add(GtfsPlace.of(row, "shape_pt_lat", "shape_pt_lon", row.whole("shape_pt_sequence", 0, 999_999_999),
                    row.decimalOrNone("shape_dist_traveled")));
        }
    }

    /** Trips in the order of the file, each as often as it departs. */
    List<GtfsTrip> trips() {
        return departures;
    }

    /** Trips that are repeated by headway. */
    GtfsHeadways headways() {
        return headways;
    }

    /** Where a trip's stop is. */
    GtfsPlace place(GtfsStopTime stop) {
        return stops.get(stop.stop());
    }

    /** Corners of a trip's shape; none when it has no shape. */
    List<GtfsPlace> shape(GtfsTrip trip) {
        return shapes.getOrDefault(trip.shape(), List.of());
    }
}
