package org.amberyard.exchange.gtfs;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.amberyard.exchange.StudyUpdate;
import org.amberyard.model.common.Month;
import org.amberyard.model.common.Quality;
import org.amberyard.model.meta.SourceNotes;
import org.amberyard.model.routes.Layover;
import org.amberyard.model.routes.Route;
import org.amberyard.model.routes.RoutesFactory;
import org.amberyard.model.routes.RoutesPackage.Literals;
import org.amberyard.model.routes.Run;
import org.amberyard.model.routes.RunKind;
import org.amberyard.model.site.ServiceCalendar;
import org.amberyard.model.site.SiteFactory;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.model.validation.CalendarDays;

/**
 * Puts blocks into a study as routes: a block that the study has by name is updated run by run, and what the schedule does not
 * tell of a run stays.
 */
final class GtfsUpdate {
    private static final List<String> TOLD = List.of("calendar", "departureMin", "durationMin", "distanceKm", "stops");
    private static final String GTFS = "GTFS ";
    private static final int NOON_MIN = 12 * 60;
    private static final int MIDDAY_FROM_MIN = 9 * 60;
    private static final int MIDDAY_TO_MIN = 15 * 60;

    private final Study study;
    private final StudyUpdate update;
    private final GtfsDays days;
    private final String citation;
    private final List<Route> fresh = new ArrayList<>();
    private ServiceCalendar calendar;

    GtfsUpdate(Study study, GtfsDays days, String citation) {
        this.study = study;
        this.update = new StudyUpdate(study);
        this.days = days;
        this.citation = citation;
    }

    StudyUpdate of(Map<String, List<GtfsRun>> blocks) {
        putCalendar();
        blocks.forEach(this::put);
        if (!fresh.isEmpty()) {
            List<Route> all = new ArrayList<>(study.getRoutes());
            all.addAll(fresh);
            update.putElements(study, StudyPackage.Literals.STUDY__ROUTES, all, fresh.stream()
                    .map(r -> "route " + r.getName() + " is added, with " + r.getRuns().size() + (r.getRuns().size() == 1 ? " run" : " runs")).toList());
        }
        return update;
    }

    private String date() {
        return days.sample().toString();
    }

    private void putCalendar() {
        String name = GTFS + days.name();
        Optional<ServiceCalendar> known = study.getCalendars().stream().filter(c -> name.equals(c.getName())).findFirst();
        calendar = known.orElseGet(SiteFactory.eINSTANCE::createServiceCalendar);
        if (known.isPresent()) {
            Month.VALUES.forEach(m -> update.put(calendar, CalendarDays.field(m), days.in(m.getValue() + 1)));
            update.source(calendar, List.of(SourceNotes.EVERY_FIELD), Quality.PUBLISHED, citation, date());
            return;
        }
        calendar.setName(name);
        Month.VALUES.forEach(m -> calendar.eSet(CalendarDays.field(m), days.in(m.getValue() + 1)));
        calendar.getSources().add(SourceNotes.of(SourceNotes.EVERY_FIELD, Quality.PUBLISHED, citation, date()));
        List<ServiceCalendar> all = new ArrayList<>(study.getCalendars());
        all.add(calendar);
        update.putElements(study, StudyPackage.Literals.STUDY__CALENDARS, all, List.of("service calendar " + name + " is added, with "
                + days.dates().size() + " days"));
    }

    private void put(String block, List<GtfsRun> runs) {
        String ofDays = block + " (" + days.name() + ")";
        Optional<Route> known = named(block).filter(r -> !isOfOtherDays(r)).or(() -> named(ofDays));
        if (known.isPresent()) {
            putRuns(known.get(), runs);
            return;
        }
        Route route = RoutesFactory.eINSTANCE.createRoute();
        route.setName(named(block).isPresent() ? ofDays : block);
        route.setDescription("GTFS block, " + days.name());
        for (int i = 0; i < runs.size(); i++) {
            route.getRuns().add(run(runs, i));
        }
        fresh.add(route);
    }

    private Optional<Route> named(String name) {
        return study.getRoutes().stream().filter(r -> name.equals(r.getName())).findFirst();
    }

    /** A block goes by the same name on days of another kind, but is another route; see the decision on blocks and kinds of days. */
    private boolean isOfOtherDays(Route route) {
        return route.getRuns().stream().map(Run::getCalendar).anyMatch(c -> c != null && c != calendar && String.valueOf(c.getName()).startsWith(GTFS));
    }

    private void putRuns(Route route, List<GtfsRun> runs) {
        Map<String, Run> known = route.getRuns().stream().collect(Collectors.toMap(r -> String.valueOf(r.getName()), r -> r, (a, b) -> a));
        List<Run> all = new ArrayList<>();
        List<String> words = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            Run run = known.get(runs.get(i).name());
            if (run == null) {
                words.add("run " + runs.get(i).name() + " of route " + route.getName() + " is added");
                all.add(run(runs, i));
            } else {
                put(run, runs, i);
                all.add(run);
            }
        }
        Set<Run> kept = Set.copyOf(all);
        route.getRuns().stream().filter(r -> !kept.contains(r))
                .forEach(r -> words.add("run " + r.getName() + " of route " + route.getName() + " is removed"));
        if (!all.equals(List.copyOf(route.getRuns()))) {
            update.putElements(route, Literals.ROUTE__RUNS, all, words);
        }
    }

    private void put(Run run, List<GtfsRun> runs, int place) {
        GtfsRun told = runs.get(place);
        update.put(run, Literals.RUN__CALENDAR, calendar);
        update.put(run, Literals.RUN__DEPARTURE_MIN, told.startS() / 60);
        update.put(run, Literals.RUN__DURATION_MIN, durationMin(runs, place));
        update.put(run, Literals.RUN__DISTANCE_KM, km(told));
        update.put(run, Literals.RUN__STOPS, told.stops());
        if (told.dwellS() > 0) {
            update.put(run, Literals.RUN__DWELL_S, dwellS(told));
        }
        update.source(run, TOLD, quality(told), cited(told), date());
    }

    private Run run(List<GtfsRun> runs, int place) {
        GtfsRun told = runs.get(place);
        Run run = RoutesFactory.eINSTANCE.createRun();
        run.setName(told.name());
        run.setKind(kind(told.startS() / 60));
        run.setCalendar(calendar);
        run.setDepartureMin(told.startS() / 60);
        run.setDurationMin(durationMin(runs, place));
        run.setDistanceKm(km(told));
        run.setStops(told.stops());
        if (told.dwellS() > 0) {
            run.setDwellS(dwellS(told));
        }
        run.setClimbM(0);
        run.setLayover(place == runs.size() - 1 ? Layover.YARD : Layover.SCHOOL);
        TOLD.forEach(f -> run.getSources().add(SourceNotes.of(f, quality(told), cited(told), date())));
        return run;
    }

    private String cited(GtfsRun run) {
        return run.isWay() ? citation + ", after trip " + run.trip() + ": straight line times " + GtfsWays.DETOUR + " at " + GtfsWays.SPEED_KMH + " km/h"
                : citation + ", trip " + run.trip();
    }

    private static Quality quality(GtfsRun run) {
        return run.isWay() ? Quality.ASSUMED : Quality.PUBLISHED;
    }

    /** Departures count whole minutes, so that a run ends at the latest when the next is said to depart. */
    private static double durationMin(List<GtfsRun> runs, int place) {
        GtfsRun run = runs.get(place);
        int departureMin = run.startS() / 60;
        double min = (run.endS() - run.startS()) / 60.0;
        double most = place + 1 < runs.size() ? runs.get(place + 1).startS() / 60 - departureMin : min;
        return Math.max(1, Math.min(Math.round(min * 100) / 100.0, most));
    }

    private static double km(GtfsRun run) {
        return Math.max(0.001, Math.round(run.km() * 1000) / 1000.0);
    }

    private static double dwellS(GtfsRun run) {
        return Math.round(run.dwellS() * 10) / 10.0;
    }

    private static RunKind kind(int departureMin) {
        if (departureMin >= MIDDAY_FROM_MIN && departureMin < MIDDAY_TO_MIN) {
            return RunKind.MIDDAY;
        }
        return departureMin < NOON_MIN ? RunKind.MORNING : RunKind.AFTERNOON;
    }
}
