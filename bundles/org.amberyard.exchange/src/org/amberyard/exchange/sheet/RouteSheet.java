package org.amberyard.exchange.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.amberyard.core.units.Unit;
import org.amberyard.model.common.CommonPackage;
import org.amberyard.model.meta.ClockTime;
import org.amberyard.model.routes.Layover;
import org.amberyard.model.routes.Route;
import org.amberyard.model.routes.RoutesFactory;
import org.amberyard.model.routes.RoutesPackage.Literals;
import org.amberyard.model.routes.Run;
import org.amberyard.model.routes.RunKind;
import org.amberyard.model.study.Study;

/** A route sheet: a row for each route, with departure, return and distance of its morning, midday and afternoon run side by side. */
final class RouteSheet implements SheetKind {
    private static final String KEY = "name";
    private static final String CLIMB = "climbPerDay";
    private static final String LAYOVER = "layover";
    private static final int NOON_MIN = 12 * 60;
    private static final Map<String, Layover> LAYOVERS = Map.of("depot", Layover.YARD, "yard", Layover.YARD, "garage", Layover.YARD,
            "school", Layover.SCHOOL, "home", Layover.HOME, "park-out", Layover.HOME, "park out", Layover.HOME);

    /** A part of the day with its columns. */
    private enum Part {
        AM(RunKind.MORNING, "AM", "am", "morning"), MIDDAY(RunKind.MIDDAY, "Midday", "midday", "noon"),
        PM(RunKind.AFTERNOON, "PM", "pm", "afternoon");

        private final RunKind kind;
        private final String label;
        private final List<String> words;

        Part(RunKind kind, String label, String... words) {
            this.kind = kind;
            this.label = label;
            this.words = List.of(words);
        }

        private String id(String what) {
            return label.toLowerCase(Locale.ROOT) + what;
        }

        private String[] called(String... names) {
            return words.stream().flatMap(w -> Arrays.stream(names).map(n -> w + " " + n)).toArray(String[]::new);
        }

        private List<SheetColumn> columns() {
            return List.of(
                    clock(id("Depart"), label + " departure", "Departure of the " + kind.getLiteral() + " run.", called("depart", "departure", "start", "out")),
                    clock(id("Return"), label + " return", "End of the " + kind.getLiteral() + " run.", called("return", "arrival", "end", "in")),
                    SheetColumn.derived(id("Distance"), label + " distance", SheetColumn.Content.NUMBER, Unit.KILOMETRE,
                            "Distance of the " + kind.getLiteral() + " run, deadhead included; empty or 0 for no such run.",
                            called("miles", "distance", "km", "mileage")));
        }

        private static SheetColumn clock(String id, String label, String meaning, String... also) {
            return SheetColumn.derived(id, label, SheetColumn.Content.CLOCK, Unit.CLOCK, meaning, also);
        }
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
        return "Adds routes with their morning, midday and afternoon runs and updates those whose name it has.";
    }

    @Override
    public List<SheetColumn> columns(Study study) {
        List<SheetColumn> columns = new ArrayList<>(List.of(
                SheetColumn.of(Literals.ROUTE__NAME, "route id", "route", "route number", "block", "block id").must(),
                SheetColumn.of(Literals.ROUTE__DESCRIPTION, "school", "schools", "destination"),
                SheetColumn.of(Literals.ROUTE__BODY_TYPE, "body type required", "body", "bus type"),
                SheetColumn.of(Literals.ROUTE__LIFT_REQUIRED, "lift required", "wheelchair lift"),
                SheetColumn.of(Literals.ROUTE__RIDERS, "max riders", "riders", "students", "load")));
        Arrays.stream(Part.values()).forEach(part -> columns.addAll(part.columns()));
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
        RowKeys keys = new RowKeys(sheet, KEY);
        FieldValue values = new FieldValue(outcome.study());
        if (outcome.study().getCalendars().isEmpty()) {
            outcome.problem(0, "The study has no service calendar that the runs could follow; add one on the page of routes.");
            return;
        }
        List<SheetColumn> columns = columns(outcome.study()).stream()
                .filter(c -> c.field().isPresent() && !c.id().equals(KEY) && !c.id().equals("stops")).toList();
        ElementIndex<Route> known = new ElementIndex<>(outcome.study().getRoutes());
        sheet.rows().forEach(row -> outcome.attempt(row, () -> {
            String name = keys.of(row);
            Route route = known.find(name).orElseGet(() -> added(row, name, outcome));
            columns.forEach(c -> outcome.attempt(row,
                    () -> values.of(row, c).ifPresent(v -> outcome.set(row.number(), route, c.field().orElseThrow(), v))));
            runs(row, route, values, outcome);
        }));
    }

    private void runs(MappedRow row, Route route, FieldValue values, SheetOutcome outcome) {
        for (Part part : Part.values()) {
            outcome.attempt(row, () -> run(row, route, part, outcome));
        }
        outcome.attempt(row, () -> details(row, route, values, outcome));
    }

    private static Route added(MappedRow row, String name, SheetOutcome outcome) {
        Route route = RoutesFactory.eINSTANCE.createRoute();
        route.setName(name);
        outcome.study().getRoutes().add(route);
        outcome.added(row.number(), route);
        return route;
    }

    private static void run(MappedRow row, Route route, Part part, SheetOutcome outcome) throws CellFault {
        OptionalDouble distance = row.number(part.id("Distance"));
        Optional<Run> known = route.getRuns().stream().filter(r -> r.getKind() == part.kind).findFirst();
        if (distance.orElse(0) == 0 && !row.has(part.id("Depart"))) {
            known.ifPresent(run -> outcome.remark("Row " + row.number() + ": the " + part.kind.getLiteral() + " run of " + route.getName()
                    + " is not on the sheet and stays as it is."));
            return;
        }
        if (distance.orElse(0) <= 0) {
            throw row.wrong(part.id("Distance"), "The " + part.kind.getLiteral() + " run of " + route.getName()
                    + " has a departure but no distance; enter one above 0.");
        }
        int departMin = row.minutes(part.id("Depart"));
        int returnMin = row.minutes(part.id("Return"));
        if (part == Part.AM && departMin >= NOON_MIN || part == Part.PM && departMin < NOON_MIN) {
            throw row.wrong(part.id("Depart"), route.getName() + " departs at " + ClockTime.text(departMin) + " on its "
                    + part.kind.getLiteral() + " run; is that before or after noon?");
        }
        if (returnMin <= departMin) {
            throw row.wrong(part.id("Return"), route.getName() + " returns at " + ClockTime.text(returnMin) + ", not after its departure at "
                    + ClockTime.text(departMin) + "; mend one of the two.");
        }
        Run run = known.orElseGet(() -> added(row, route, part, outcome));
        outcome.set(row.number(), run, Literals.RUN__DEPARTURE_MIN, departMin);
        outcome.set(row.number(), run, Literals.RUN__DURATION_MIN, (double) returnMin - departMin);
        outcome.set(row.number(), run, Literals.RUN__DISTANCE_KM, distance.getAsDouble());
    }

    private static Run added(MappedRow row, Route route, Part part, SheetOutcome outcome) {
        Run run = RoutesFactory.eINSTANCE.createRun();
        run.setName(part.label);
        run.setKind(part.kind);
        run.setCalendar(outcome.study().getCalendars().get(0));
        int place = (int) route.getRuns().stream().filter(r -> r.getKind().compareTo(part.kind) < 0).count();
        route.getRuns().add(place, run);
        outcome.added(row.number(), run);
        return run;
    }

    private void details(MappedRow row, Route route, FieldValue values, SheetOutcome outcome) throws CellFault {
        OptionalDouble climbM = row.number(CLIMB);
        Optional<Object> stops = values.of(row, SheetColumn.of(Literals.RUN__STOPS));
        Optional<Layover> layover = layover(row);
        double dayKm = route.getRuns().stream().mapToDouble(Run::getDistanceKm).sum();
        if (climbM.isPresent() && dayKm == 0) {
            throw row.wrong(CLIMB, "The runs of " + route.getName() + " have no distance by which the climb could be parted; enter distances, or clear "
                    + "the climb.");
        }
        for (Run run : route.getRuns()) {
            stops.ifPresent(v -> outcome.set(row.number(), run, Literals.RUN__STOPS, v));
            climbM.ifPresent(m -> outcome.set(row.number(), run, Literals.RUN__CLIMB_M, m * run.getDistanceKm() / dayKm));
            boolean last = run == route.getRuns().get(route.getRuns().size() - 1);
            layover.filter(l -> !last).ifPresent(l -> outcome.set(row.number(), run, Literals.RUN__LAYOVER, l));
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
