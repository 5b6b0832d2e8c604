package org.amberyard.exchange.gtfs;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.ProblemList;

/**
 * Runs of the chosen blocks in the order of the day. A clock shows no more than 24 h: a block that begins after midnight of its
 * service day is put on the morning of the next, and runs that begin after midnight are joined to the one before them.
 */
final class GtfsRuns {
    private static final int DAY_S = 24 * 3600;
    private static final double MOST_KM = 1000;
    private static final int MOST_STOPS = 300;
    private static final double MOST_DWELL_S = 900;

    private final GtfsDistances distances;
    private final ProblemList problems;
    private final Map<String, List<GtfsRun>> blocks = new LinkedHashMap<>();
    private final List<String> shifted = new ArrayList<>();
    private int joined;
    private final GtfsWays ways;
    private int guessed;

    GtfsRuns(GtfsDetails details, GtfsDistances distances, String file) throws ImportException {
        this.distances = distances;
        this.ways = new GtfsWays(distances);
        this.problems = new ProblemList(file);
        Map<String, List<GtfsTrip>> trips = new LinkedHashMap<>();
        details.trips().forEach(t -> trips.computeIfAbsent(t.isBlocked() ? "block " + t.block() : "route " + t.route(), b -> new ArrayList<>()).add(t));
        trips.values().stream().filter(own -> own.get(0).isBlocked()).forEach(own -> blocks.put(own.get(0).block(), block(own)));
        trips.values().stream().filter(own -> !own.get(0).isBlocked()).forEach(this::guess);
        problems.refuseIfAny();
    }

    private void guess(List<GtfsTrip> trips) {
        for (List<GtfsTrip> bus : new GtfsChains(distances).of(trips)) {
            guessed++;
            int number = 1;
            while (blocks.containsKey(trips.get(0).route() + "-" + number)) {
                number++;
            }
            blocks.put(trips.get(0).route() + "-" + number, block(bus));
        }
    }

    /** Blocks that were made of trips without any. */
    int guessed() {
        return guessed;
    }

    private List<GtfsRun> block(List<GtfsTrip> trips) {
        String block = trips.get(0).block();
        List<GtfsTrip> ordered = new ArrayList<>(trips);
        ordered.sort(Comparator.comparingInt(GtfsTrip::startS).thenComparing(GtfsTrip::id));
        for (int i = 1; i < ordered.size(); i++) {
            checkOrder(ordered.get(i - 1), ordered.get(i));
        }
        List<GtfsRun> runs = within(block, ways.with(ordered, ordered.stream().map(this::run).toList()));
        runs.forEach(r -> check(block, r));
        return named(runs);
    }

    private void checkOrder(GtfsTrip trip, GtfsTrip next) {
        if (next.startS() < trip.endS()) {
            problems.add(GtfsFeed.TRIPS, next.row(), "block_id", "The trip “" + next.id() + "” of block " + next.block() + " starts at "
                    + clock(next.startS()) + ", before the trip “" + trip.id() + "” of the same block has ended at " + clock(trip.endS())
                    + "; one bus cannot drive both.");
        }
    }

    private GtfsRun run(GtfsTrip trip) {
        int stops = (int) trip.stops().stream().filter(GtfsStopTime::served).count();
        double dwellS = trip.stops().stream().filter(s -> s.arrivalS().isPresent() && s.departureS().isPresent())
                .filter(s -> s != trip.first() && s != trip.last())
                .mapToDouble(s -> s.departureS().getAsInt() - s.arrivalS().getAsInt()).sum() / Math.max(1, stops);
        return new GtfsRun(trip.route(), trip.startS(), trip.endS(), distances.of(trip).km(), Math.max(1, stops),
                Math.min(dwellS, MOST_DWELL_S), trip.id(), false);
    }

    private List<GtfsRun> within(String block, List<GtfsRun> runs) {
        int days = runs.get(0).startS() / DAY_S;
        if (days > 0) {
            shifted.add(block);
        }
        List<GtfsRun> within = new ArrayList<>();
        for (GtfsRun run : runs.stream().map(r -> r.earlier(days * DAY_S)).toList()) {
            if (run.startS() < DAY_S) {
                within.add(run);
            } else {
                within.add(within.remove(within.size() - 1).joined(run));
                joined++;
            }
        }
        return within;
    }

    private void check(String block, GtfsRun run) {
        String what = "The trip “" + run.trip() + "” of block " + block;
        if (run.endS() <= run.startS() || run.endS() - run.startS() > DAY_S) {
            tell(what + " takes " + (run.endS() - run.startS()) / 60 + " min; a run takes more than 0 min and at most 24 h.");
        }
        if (run.km() <= 0 || run.km() > MOST_KM) {
            tell(what + String.format(Locale.ROOT, " is %.1f km long; a run is longer than 0 km and at most 1,000 km.", run.km()));
        }
        if (run.stops() > MOST_STOPS) {
            tell(what + " has " + run.stops() + " stops; a run has at most 300.");
        }
    }

    private void tell(String message) {
        problems.add(GtfsFeed.TRIPS, 0, "", message);
    }

    /** Names by departure and route, which stay the same when a schedule is published again. */
    private static List<GtfsRun> named(List<GtfsRun> runs) {
        Set<String> taken = new HashSet<>();
        List<GtfsRun> named = new ArrayList<>();
        for (GtfsRun run : runs) {
            String name = clock(run.startS()) + " " + run.name();
            String free = name;
            for (int i = 2; !taken.add(free); i++) {
                free = name + " (" + i + ")";
            }
            named.add(new GtfsRun(free, run.startS(), run.endS(), run.km(), run.stops(), run.dwellS(), run.trip(), run.isWay()));
        }
        return named;
    }

    private static String clock(int seconds) {
        return String.format(Locale.ROOT, "%02d:%02d", seconds / 3600, seconds / 60 % 60);
    }

    /** Runs of each block, in the order of the file. */
    Map<String, List<GtfsRun>> blocks() {
        return blocks;
    }

    /** Blocks that begin after midnight of their service day. */
    List<String> shifted() {
        return shifted;
    }

    /** Trips that were joined to the one before them. */
    int joined() {
        return joined;
    }

    /** Ways between trips of blocks. */
    GtfsWays ways() {
        return ways;
    }

    /** Blocks of more than a day, which one bus cannot drive day after day. */
    List<String> tooLong() {
        return blocks.entrySet().stream().filter(b -> b.getValue().get(b.getValue().size() - 1).endS() - b.getValue().get(0).startS() > DAY_S)
                .map(Map.Entry::getKey).toList();
    }
}
