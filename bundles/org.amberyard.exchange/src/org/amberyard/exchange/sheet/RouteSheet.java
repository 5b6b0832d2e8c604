package org.amberyard.exchange.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.amberyard.core.units.Unit;
import org.amberyard.model.common.CommonPackage;
import org.amberyard.model.meta.ClockTime;
import org.amberyard.model.routes.Layover;
import org.amberyard.model.routes.Route;
import org.amberyard.model.routes.RoutesFactory;
import org.amberyard.model.routes.RoutesPackage.Literals;
import org.amberyard.model.routes.Run;
import org.amberyard.model.study.Study;

/**
 * A route sheet: departure, return and distance of the morning, midday and afternoon run of each route, side by side in a row, or in rows of
 * their own of which a column, the end of the route's name or the name of the sheet says which run they tell.
 */
final class RouteSheet implements SheetKind {
    /** The column of the name. */
    static final String KEY = "name";
    private static final String CLIMB = "climbPerDay";
    private static final String LAYOVER = "layover";
    private static final int NOON_MIN = 12 * 60;
    private static final Map<String, Layover> LAYOVERS = Map.of("depot", Layover.YARD, "yard", Layover.YARD, "garage", Layover.YARD,
            "school", Layover.SCHOOL, "home", Layover.HOME, "park-out", Layover.HOME, "park out", Layover.HOME);

    private final Map<DayPart, Set<ElementKey>> elsewhere;

    RouteSheet() {
        this(Map.of());
    }

    /** @param elsewhere routes of which other sheets, read together with this one, tell the run of a part of the day */
    RouteSheet(Map<DayPart, Set<ElementKey>> elsewhere) {
        this.elsewhere = elsewhere;
    }

    @Override
    public String id() {
        return "routes";
    }

    @Override
    public String label() {
        return "Route sheet";
    }

    @Override
    public String purpose() {
        return "Adds routes with their morning, midday and afternoon runs and updates those whose name it has; where a cell is empty, what stands stays.";
    }

    @Override
    public List<SheetColumn> columns(Study study) {
        List<SheetColumn> columns = new ArrayList<>(List.of(
                SheetColumn.of(Literals.ROUTE__NAME, "route id", "route", "route number", "block", "block id").must(),
                SheetColumn.of(Literals.ROUTE__DESCRIPTION, "school", "schools", "destination"),
                SheetColumn.of(Literals.ROUTE__BODY_TYPE, "body type required", "body", "bus type"),
                SheetColumn.of(Literals.ROUTE__LIFT_REQUIRED, "lift required", "wheelchair lift"),
                SheetColumn.of(Literals.ROUTE__RIDERS, "max riders", "riders", "students", "load")));
        Arrays.stream(DayPart.values()).forEach(part -> columns.addAll(part.columns()));
        columns.addAll(DayPart.ownRowColumns());
        columns.add(SheetColumn.of(Literals.RUN__STOPS, "stops per run"));
        columns.add(SheetColumn.derived(CLIMB, "Climb per day", SheetColumn.Content.NUMBER, Unit.METRE,
                "All climbs of the day; each run takes its part by distance.", "elev gain ft day", "elevation gain", "elev gain", "climb"));
        columns.add(SheetColumn.of(CommonPackage.Literals.SOURCED__NOTE, "notes", "remarks", "comments"));
        columns.add(SheetColumn.derived(LAYOVER, "Stands between runs", SheetColumn.Content.TEXT, Unit.NONE,
                "Where the bus stands between its runs: depot, school or home.", "midday layover", "layover", "park"));
        return columns;
    }

    @Override
    public String example(SheetColumn column) {
        return Map.ofEntries(Map.entry(KEY, "R07"), Map.entry("description", "Ashcombe Middle"), Map.entry("bodyType", "C"),
                Map.entry("liftRequired", "no"), Map.entry("riders", "48"), Map.entry("amDepart", "6:35"), Map.entry("amReturn", "7:40"),
                Map.entry("amDistance", "16"), Map.entry("pmDepart", "14:20"), Map.entry("pmReturn", "15:25"), Map.entry("pmDistance", "16"),
                Map.entry("stops", "22"), Map.entry(CLIMB, "310"), Map.entry(LAYOVER, "depot")).getOrDefault(column.id(), "");
    }

    @Override
    public void read(MappedSheet sheet, SheetOutcome outcome) {
        if (outcome.study().getCalendars().isEmpty()) {
            outcome.problem(0, "The study has no service calendar that the runs could follow; add one on the page of routes.");
            return;
        }
        List<String> missing = sheet.rows().stream().findFirst().map(DayPart::missingReturns).orElse(List.of());
        if (!missing.isEmpty()) {
            missing.forEach(id -> outcome.problem(outcome.headerRow(), sheet.column(id).missing()));
            return;
        }
        FieldValue values = new FieldValue(outcome.study());
        rowsOf(sheet, outcome).forEach((route, rows) -> {
            for (DayPart part : DayPart.values()) {
                run(rows, route, part, outcome);
            }
            rows.forEach(row -> details(row, rows.size() > 1, route, values, outcome));
        });
    }

    /** The routes that the rows name, with their own fields set. */
    private Map<Route, List<MappedRow>> rowsOf(MappedSheet sheet, SheetOutcome outcome) {
        RowKeys keys = new RowKeys(sheet, KEY, RouteSheet::tellDifferentRuns);
        List<SheetColumn> columns = columns(outcome.study()).stream()
                .filter(c -> c.field().isPresent() && !c.id().equals(KEY) && !c.id().equals("stops")).toList();
        NamedRows<Route> routes = new NamedRows<>(keys, columns, outcome.study().getRoutes(), RouteSheet::made, outcome);
        keys.named(name -> routes.knows(name) ? name : DayPart.without(name));
        Map<Route, List<MappedRow>> rowsOf = new LinkedHashMap<>();
        sheet.rows().forEach(row -> routes.read(row).ifPresent(route -> rowsOf.computeIfAbsent(route, r -> new ArrayList<>()).add(row)));
        return rowsOf;
    }

    private static boolean tellDifferentRuns(MappedRow one, MappedRow other) {
        List<DayPart> parts = List.of(DayPart.values());
        return parts.stream().anyMatch(p -> p.isIn(one)) && parts.stream().anyMatch(p -> p.isIn(other))
                && parts.stream().noneMatch(p -> p.isIn(one) && p.isIn(other));
    }

    private static Route made(String name) {
        Route route = RoutesFactory.eINSTANCE.createRoute();
        route.setName(name);
        return route;
    }

    private void run(List<MappedRow> rows, Route route, DayPart part, SheetOutcome outcome) {
        List<Run> known = route.getRuns().stream().filter(r -> r.getKind() == part.kind()).toList();
        Optional<MappedRow> told = rows.stream().filter(part::isIn).findFirst();
        told.ifPresent(row -> run(row, route, part, known, outcome));
        if (told.isEmpty() && !known.isEmpty() && !elsewhere.getOrDefault(part, Set.of()).contains(ElementKey.of(route.getName()))) {
            outcome.remark("Row " + rows.get(0).number() + ": the " + part.word() + " run of " + route.getName()
                    + " is not on the sheet and stays as it is.");
        }
    }

    private static void run(MappedRow row, Route route, DayPart part, List<Run> known, SheetOutcome outcome) {
        RowReading cells = outcome.reading(row);
        if (known.size() > 1) {
            cells.wrong(row.wrong(part.in(row, "Depart"), route.getName() + " has " + known.size() + " " + part.word()
                    + " runs in the study, of which the sheet tells one; join them in the study, or clear the run in the sheet."));
        }
        double distanceKm = cells.of(() -> distanceKm(row, route, part), 0.0);
        int departMin = cells.of(() -> departMin(row, route, part), 0);
        int returnMin = cells.of(() -> row.minutes(part.in(row, "Return")), Integer.MAX_VALUE);
        if (returnMin <= departMin) {
            cells.wrong(row.wrong(part.in(row, "Return"), route.getName() + " returns at " + ClockTime.text(returnMin) + ", not after its departure at "
                    + ClockTime.text(departMin) + "; mend one of the two."));
        }
        if (cells.isSound()) {
            Run run = known.stream().findFirst().orElseGet(() -> added(row, route, part, outcome));
            outcome.set(row.number(), part.in(row, "Depart"), run, Literals.RUN__DEPARTURE_MIN, departMin);
            outcome.set(row.number(), run, Literals.RUN__DURATION_MIN, (double) returnMin - departMin);
            outcome.set(row.number(), part.in(row, "Distance"), run, Literals.RUN__DISTANCE_KM, distanceKm);
        }
    }

    private static double distanceKm(MappedRow row, Route route, DayPart part) throws CellFault {
        double km = row.number(part.in(row, "Distance")).orElse(0);
        if (km <= 0) {
            throw row.wrong(part.in(row, "Distance"), "The " + part.word() + " run of " + route.getName()
                    + " has a departure but no distance; enter one above 0.");
        }
        return km;
    }

    private static int departMin(MappedRow row, Route route, DayPart part) throws CellFault {
        int departMin = row.minutes(part.in(row, "Depart"));
        if (part == DayPart.AM && departMin >= NOON_MIN || part == DayPart.PM && departMin < NOON_MIN) {
            throw row.wrong(part.in(row, "Depart"), route.getName() + " departs at " + ClockTime.text(departMin) + " on its "
                    + part.word() + " run; is that before or after noon? Write it as 6:35 am, or move it to the column of its run.");
        }
        return departMin;
    }

    private static Run added(MappedRow row, Route route, DayPart part, SheetOutcome outcome) {
        Run run = RoutesFactory.eINSTANCE.createRun();
        run.setName(part.label());
        run.setKind(part.kind());
        run.setCalendar(outcome.study().getCalendars().get(0));
        int place = (int) route.getRuns().stream().filter(r -> r.getKind().compareTo(part.kind()) < 0).count();
        route.getRuns().add(place, run);
        outcome.added(row.number(), run);
        return run;
    }

    private void details(MappedRow row, boolean oneOfSeveral, Route route, FieldValue values, SheetOutcome outcome) {
        RowReading cells = outcome.reading(row);
        if (row.has(DayPart.PART) && DayPart.named(row.cell(DayPart.PART).text()).isEmpty()) {
            cells.wrong(row.fault(DayPart.PART, "AM, midday or PM"));
        }
        OptionalDouble climbM = cells.of(() -> row.number(CLIMB), OptionalDouble.empty());
        Optional<Object> stops = cells.of(() -> values.of(row, SheetColumn.of(Literals.RUN__STOPS)), Optional.empty());
        Optional<Layover> layover = cells.of(() -> layover(row), Optional.empty());
        double dayKm = route.getRuns().stream().mapToDouble(Run::getDistanceKm).sum();
        if (climbM.isPresent() && dayKm == 0) {
            cells.wrong(row.wrong(CLIMB, "The runs of " + route.getName() + " have no distance by which the climb could be parted; enter distances, or clear "
                    + "the climb."));
        }
        for (Run run : cells.isSound() ? route.getRuns() : List.<Run>of()) {
            boolean meant = !oneOfSeveral && !DayPart.hasOwnRow(row)
                    || Arrays.stream(DayPart.values()).anyMatch(p -> p.kind() == run.getKind() && p.isIn(row));
            stops.filter(v -> meant).ifPresent(v -> outcome.set(row.number(), run, Literals.RUN__STOPS, v));
            climbM.ifPresent(m -> outcome.set(row.number(), CLIMB, run, Literals.RUN__CLIMB_M, m * run.getDistanceKm() / dayKm));
            boolean last = run == route.getRuns().get(route.getRuns().size() - 1);
            layover.filter(l -> !last && meant).ifPresent(l -> outcome.set(row.number(), LAYOVER, run, Literals.RUN__LAYOVER, l));
        }
    }

    private static Optional<Layover> layover(MappedRow row) throws CellFault {
        Optional<String> text = row.text(LAYOVER);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Layover layover = LAYOVERS.get(text.get().toLowerCase(Locale.ROOT));
        if (layover == null) {
            throw row.fault(LAYOVER, "depot, school or home");
        }
        return Optional.of(layover);
    }
}
