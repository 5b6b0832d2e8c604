package org.amberyard.exchange.gtfs;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.ProblemList;
import org.amberyard.exchange.ReadingProgress;

/**
 * What a transit schedule holds, after the General Transit Feed Specification Reference (github.com/google/transit, revised
 * Nov 16, 2023): kinds of days, routes and blocks, counted without keeping trips, so that a schedule of any size can be looked
 * into. A block is what one vehicle does on a day: the trips of a block_id whose services run on that day.
 */
public final class GtfsFeed {
    static final List<String> TRIP_COLUMNS = List.of("route_id", "service_id", "trip_id");
    static final String TRIPS = "trips.txt";
    private static final String UNBLOCKED = "route ";
    private static final int MOST_ROUTES = 100_000;
    private static final int MOST_WORKS = 500_000;

    private final Path path;
    private final ProblemList problems;
    private final List<String> agencies = new ArrayList<>();
    private final Map<String, String> routes = new HashMap<>();
    private final Set<String> railways = new HashSet<>();
    private final GtfsServices services = new GtfsServices();
    private final Map<Work, Integer> works = new HashMap<>();
    private List<GtfsDays> kinds = List.of();

    private GtfsFeed(Path path) {
        this.path = path;
        this.problems = new ProblemList(path.getFileName().toString());
    }

    /** What trips may share: a block, a service and a route. */
    private record Work(String block, String service, String route) {
    }

    /**
     * Looks into a schedule.
     *
     * @param path zip file or folder
     * @throws ImportException when it is not understood
     * @throws java.util.concurrent.CancellationException when it is no longer wanted
     */
    public static GtfsFeed open(Path path, ReadingProgress progress) throws ImportException {
        GtfsFeed feed = new GtfsFeed(path);
        try (GtfsFiles files = GtfsFiles.of(path)) {
            feed.read(new GtfsTable(files, feed.problems, progress));
        } catch (IOException e) {
            throw ProblemList.refusal(path.getFileName().toString(), 0, "", "The schedule cannot be read: " + e.getMessage());
        }
        feed.problems.refuseIfAny();
        return feed;
    }

    private void read(GtfsTable table) throws ImportException {
        table.readNeeded("agency.txt", List.of("agency_name"), r -> {
            if (agencies.size() < MOST_ROUTES) {
                agencies.add(r.text("agency_name"));
            }
        });
        table.readNeeded("routes.txt", List.of("route_id"), this::takeRoute);
        services.read(table, problems);
        table.readNeeded(TRIPS, TRIP_COLUMNS, this::takeTrip);
        if (problems.isEmpty()) {
            kinds = services.kinds(works.entrySet().stream().collect(
                    Collectors.toMap(w -> w.getKey().service(), Map.Entry::getValue, Integer::sum, TreeMap::new)));
            checkBlocks();
        }
    }

    private void checkBlocks() {
        if (works.isEmpty()) {
            problems.add(TRIPS, 0, "", "The file has no trips of buses.");
        } else if (kinds.isEmpty()) {
            problems.add("calendar.txt", 0, "", "No service of a trip runs on any day.");
        }
    }

    private void takeRoute(GtfsRow row) throws ImportException {
        String id = row.needed("route_id");
        String name = row.text("route_short_name").isEmpty() ? row.text("route_long_name") : row.text("route_short_name");
        if (routes.size() == MOST_ROUTES) {
            throw ProblemList.refusal("routes.txt", row.row(), "", "The schedule has more than 100,000 routes.");
        }
        if (!row.text("route_type").isEmpty() && !isBus(row.whole("route_type", 0, 1799))) {
            railways.add(id);
        }
        if (routes.putIfAbsent(id, name.isEmpty() ? id : name) != null) {
            row.refuse("route_id", "The route “" + id + "” stands there twice; keep one row.");
        }
    }

    /** Bus and trolleybus; bus services of the extended types, from memory. */
    private static boolean isBus(int type) {
        return type == 3 || type == 11 || type >= 700 && type < 900;
    }

    private void takeTrip(GtfsRow row) throws ImportException {
        String service = row.needed("service_id");
        String route = row.needed("route_id");
        if (!routes.containsKey(route)) {
            row.refuse("route_id", "“" + route + "” is no route of routes.txt.");
        } else if (!services.has(service)) {
            row.refuse("service_id", "“" + service + "” is no service of calendar.txt or calendar_dates.txt.");
        } else if (!railways.contains(route)) {
            if (works.size() == MOST_WORKS) {
                throw ProblemList.refusal(TRIPS, row.row(), "", "The schedule has more than 500,000 blocks; ask the agency for a part.");
            }
            works.merge(new Work(block(row), service, route), 1, Integer::sum);
        }
    }

    /** Block of a trip; all trips of a route that have none share one, which says so. */
    String block(GtfsRow row) {
        return isBlocked(row) ? row.text("block_id") : UNBLOCKED + route(row.text("route_id"));
    }

    /** True when the schedule says in which block a trip is. */
    static boolean isBlocked(GtfsRow row) {
        return !row.text("block_id").isEmpty();
    }

    /** Number of routes that are driven by other vehicles than buses; their trips are left out. */
    public int otherRoutes() {
        return railways.size();
    }

    /** Names of the agencies. */
    public List<String> agencies() {
        return List.copyOf(agencies);
    }

    /** Kinds of days, that of most days first. */
    public List<GtfsDays> kinds() {
        return kinds;
    }

    /** Blocks of a kind of days, by name; trips without a block_id stand there by route. */
    public List<GtfsBlock> blocks(GtfsDays days) {
        Map<String, Set<String>> named = new TreeMap<>(Comparator.comparing(GtfsFeed::padded).thenComparing(Comparator.naturalOrder()));
        Map<String, Integer> trips = new HashMap<>();
        works.forEach((work, count) -> {
            if (services.runs(work.service(), days.sample())) {
                named.computeIfAbsent(work.block(), b -> new TreeSet<>(Comparator.comparing(GtfsFeed::padded)))
                        .add(routes.get(work.route()));
                trips.merge(work.block(), count, Integer::sum);
            }
        });
        return named.entrySet().stream().map(b -> new GtfsBlock(b.getKey(), List.copyOf(b.getValue()), trips.get(b.getKey()))).toList();
    }

    /** Sorts 2 before 10. */
    private static String padded(String name) {
        return name.matches("\\d{1,12}") ? String.format("%12s", name) : name;
    }

    /** Zip file or folder of the schedule. */
    public Path path() {
        return path;
    }

    /** Name of a route that trips have. */
    String route(String id) {
        return routes.getOrDefault(id, id);
    }

    /** True when a trip of a route and a service is driven by a bus on some days. */
    boolean isDriven(String route, String service, GtfsDays days) {
        return !railways.contains(route) && services.runs(service, days.sample());
    }
}
