package org.amberyard.exchange.gtfs;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.ProblemList;

/** Dates of the services of a schedule: weekly days of calendar.txt, with dates added and taken away in calendar_dates.txt. */
final class GtfsServices {
    private static final LocalDate ORIGIN = LocalDate.of(2000, 1, 1);
    private static final int MOST_SERVICES = 20_000;
    private static final int MOST_STARTS = 2000;
    private static final int YEAR_DAYS = 365;
    private static final String CALENDAR = "calendar.txt";
    private static final String DATES = "calendar_dates.txt";

    /** Days since the origin on which each service runs. */
    private final Map<String, BitSet> days = new HashMap<>();

    void read(GtfsTable table, ProblemList problems) throws ImportException {
        List<String> weekdays = new ArrayList<>();
        for (DayOfWeek day : DayOfWeek.values()) {
            weekdays.add(day.name().toLowerCase(Locale.ROOT));
        }
        List<String> needed = new ArrayList<>(List.of("service_id", "start_date", "end_date"));
        needed.addAll(weekdays);
        boolean weekly = table.read(CALENDAR, needed, row -> takeWeekly(row, weekdays));
        boolean dates = table.read(DATES, List.of("service_id", "date", "exception_type"), this::takeDate);
        if (!weekly && !dates) {
            problems.add(CALENDAR, 0, "", "calendar.txt and calendar_dates.txt are missing; one of them must say when services run.");
        }
    }

    private void takeWeekly(GtfsRow row, List<String> weekdays) throws ImportException {
        String service = row.needed("service_id");
        boolean[] runs = new boolean[weekdays.size()];
        for (int i = 0; i < runs.length; i++) {
            runs[i] = row.whole(weekdays.get(i), 0, 1) == 1;
        }
        Optional<LocalDate> first = row.date("start_date");
        Optional<LocalDate> last = row.date("end_date");
        if (first.isEmpty() || last.isEmpty()) {
            return;
        }
        if (last.get().isBefore(first.get())) {
            row.refuse("end_date", "The service ends before it starts.");
            return;
        }
        if (days.containsKey(service)) {
            row.refuse("service_id", "The service “" + service + "” stands there twice; keep one row.");
            return;
        }
        setWeekly(days(service), first.get(), last.get(), runs);
    }

    /** @param runs by day of the week, from Monday */
    private static void setWeekly(BitSet runsOn, LocalDate first, LocalDate last, boolean[] runs) {
        int weekday = first.getDayOfWeek().getValue() - 1;
        for (int day = index(first); day <= index(last); day++) {
            runsOn.set(day, runs[weekday]);
            weekday = (weekday + 1) % runs.length;
        }
    }

    private void takeDate(GtfsRow row) throws ImportException {
        BitSet service = days(row.needed("service_id"));
        boolean added = row.whole("exception_type", 1, 2) == 1;
        row.date("date").ifPresent(d -> service.set(index(d), added));
    }

    private BitSet days(String service) throws ImportException {
        if (days.size() == MOST_SERVICES && !days.containsKey(service)) {
            throw ProblemList.refusal(CALENDAR, 0, "", "The schedule has more than 20,000 services.");
        }
        return days.computeIfAbsent(service, s -> new BitSet());
    }

    private static int index(LocalDate date) {
        return (int) ChronoUnit.DAYS.between(ORIGIN, date);
    }

    boolean has(String service) {
        return days.containsKey(service);
    }

    /**
     * Kinds of days of twelve months: days on which the same of some services run, the kind of most days first. The months are
     * those in which most trips run, for a schedule may hold services that are over or run for ever.
     *
     * @param trips number of trips of each service
     */
    List<GtfsDays> kinds(Map<String, Integer> trips) {
        BitSet any = new BitSet();
        trips.keySet().forEach(s -> any.or(days.getOrDefault(s, new BitSet())));
        Map<BitSet, List<LocalDate>> dates = new LinkedHashMap<>();
        if (!any.isEmpty()) {
            List<String> ordered = List.copyOf(trips.keySet());
            LocalDate first = ORIGIN.plusDays(busiestYear(trips));
            first.datesUntil(first.plusYears(1)).filter(d -> any.get(index(d)))
                    .forEach(d -> dates.computeIfAbsent(running(ordered, d), k -> new ArrayList<>()).add(d));
        }
        return GtfsDays.named(List.copyOf(dates.values()));
    }

    /**
     * First day of the year, of those that begin with a service, in which most trips run on any day; of several years the one with
     * most runs of them, of several such the latest.
     */
    private int busiestYear(Map<String, Integer> trips) {
        List<Integer> starts = trips.keySet().stream().map(s -> days.getOrDefault(s, new BitSet()).nextSetBit(0)).filter(d -> d >= 0)
                .distinct().sorted(Comparator.reverseOrder()).limit(MOST_STARTS).toList();
        return starts.stream().max(Comparator.comparingLong((Integer start) -> runs(trips, start, 1))
                .thenComparingLong(start -> runs(trips, start, YEAR_DAYS)).thenComparing(start -> start)).orElseThrow();
    }

    /** Runs in a year of trips, each of them counted so many times at most. */
    private long runs(Map<String, Integer> trips, int start, int most) {
        return trips.entrySet().stream().mapToLong(service -> (long) service.getValue() * Math.min(most,
                days.getOrDefault(service.getKey(), new BitSet()).get(start, start + YEAR_DAYS).cardinality())).sum();
    }

    private BitSet running(List<String> services, LocalDate date) {
        BitSet running = new BitSet();
        IntStream.range(0, services.size()).filter(i -> runs(services.get(i), date)).forEach(running::set);
        return running;
    }

    /** True when a service runs on a date. */
    boolean runs(String service, LocalDate date) {
        return days.containsKey(service) && days.get(service).get(index(date));
    }
}
