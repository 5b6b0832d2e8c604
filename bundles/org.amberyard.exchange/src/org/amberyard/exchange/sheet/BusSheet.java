package org.amberyard.exchange.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import org.amberyard.core.units.Unit;
import org.amberyard.model.common.CommonPackage;
import org.amberyard.model.common.Quality;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.FleetFactory;
import org.amberyard.model.fleet.FleetPackage.Literals;
import org.amberyard.model.fleet.Role;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.VehicleType;
import org.amberyard.study.NearWords;
import org.amberyard.study.begin.AssumedTypes;
import org.eclipse.emf.ecore.EStructuralFeature;

/** A list of buses, a row for each. */
final class BusSheet implements SheetKind {
    private static final String KEY = "name";
    private static final String TYPE = "type";
    private static final String ROLE = Literals.BUS__ROLE.getName();
    private static final String ROUTE = Literals.BUS__ROUTE.getName();
    private static final String FUEL = "fuel";
    private static final String BODY = "bodyType";
    private static final String START = "odometerAtStart";
    private static final String ANNUAL = "annualDistance";
    private static final String UPKEEP = "upkeepPerYear";
    private static final String[] UNKNOWN = {"unknown", "?", "n/a", "na", "tbd"};
    private static final double CLEARLY_LESS = 0.95;
    /** No bus has more seats; common practice, no source. */
    private static final int MOST_SEATS = 100;
    /** Lists have names of owners and lenders where the programmes ask for a word. */
    private static final Set<EStructuralFeature> MAYBE_NAMES = Set.of(Literals.BUS__OWNERSHIP, Literals.BUS__LIEN);

    @Override
    public String id() {
        return "buses";
    }

    @Override
    public String label() {
        return "List of buses";
    }

    @Override
    public String purpose() {
        return "Adds buses to the fleet and updates those whose number it has; buses that it does not name, and fields of empty cells, stay as they are.";
    }

    @Override
    public List<SheetColumn> columns(Study study) {
        ElementIndex<VehicleType> types = new ElementIndex<>(study.getVehicleTypes());
        return List.of(
                SheetColumn.of(Literals.BUS__NAME, "bus id", "bus number", "bus", "unit", "unit number", "vehicle", "vehicle id",
                        "vehicle number", "fleet number").must(),
                SheetColumn.of(Literals.BUS__VIN, "vehicle identification number", "vin placeholder")
                        .toldBy(t -> t.matches("[A-HJ-NPR-Za-hj-npr-z0-9]{17}") && t.matches(".*[A-Za-z].*") && t.matches(".*\\d.*")),
                SheetColumn.of(Literals.BUS__ROLE, "use", "status"),
                SheetColumn.of(Literals.BUS__TYPE, "type", "model", "bus type").toldBy(t -> types.find(t).isPresent()),
                SheetColumn.derived(BODY, "Body type", SheetColumn.Content.TEXT, Unit.NONE,
                        "Body type by its letter; with the fuel it tells the vehicle type where no column does.", "body", "body style", "type letter"),
                SheetColumn.derived(FUEL, "Fuel", SheetColumn.Content.TEXT, Unit.NONE,
                        "Fuel, or electric; with the body type it tells the vehicle type where no column does.", "fuel type", "energy"),
                SheetColumn.of(Literals.BUS__ROUTE, "assigned route", "route id", "route number"),
                SheetColumn.of(Literals.BUS__MODEL_YEAR, "model year", "year", "yr", "chassis year", "chassis yr", "my"),
                SheetColumn.of(Literals.BUS__ENGINE_MODEL_YEAR, "engine year", "engine yr", "engine my"),
                SheetColumn.of(Literals.BUS__IN_SERVICE_YEAR, "in service fy", "in service", "in service year", "service year"),
                SheetColumn.of(Literals.BUS__ODOMETER_KM, "odometer end fy", "odometer end", "current odometer", "mileage", "odometer reading"),
                SheetColumn.derived(START, "Odometer a year before", SheetColumn.Content.NUMBER, Unit.KILOMETRE,
                        "Reading at the start of the last year; the reading of now is held against it.", "odometer start fy", "odometer start",
                        "previous odometer"),
                SheetColumn.derived(ANNUAL, "Annual distance", SheetColumn.Content.NUMBER, Unit.KILOMETRE,
                        "All that the bus drives in a year; what its route does not ask for is its other distance.", "annual miles",
                        "miles per year", "yearly miles", "annual mileage", "annual km"),
                SheetColumn.of(Literals.BUS__OTHER_KM_PER_YEAR, "other miles", "other distance"),
                SheetColumn.of(Literals.BUS__IDLE_HOURS_PER_YEAR, "idle hours", "idle hours yr", "idling hours"),
                SheetColumn.of(Literals.BUS__MEASURED_KM_PER_L, "mpg", "mpg driving", "fuel economy", "miles per gallon"),
                SheetColumn.derived(UPKEEP, "Upkeep per year", SheetColumn.Content.NUMBER, Unit.MONEY,
                        "Work orders of a year, parts and labour, without warranty and accident work; needs the annual distance.",
                        "maintenance usd fy", "maintenance", "maintenance cost", "annual maintenance", "repairs"),
                SheetColumn.of(Literals.BUS__PLANNED_RETIREMENT_YEAR, "planned retire fy", "retirement year", "planned retirement year", "retire"),
                SheetColumn.of(Literals.BUS__SEATS, "seating capacity", "seating", "passengers", "passenger capacity")
                        .vaguely(BusSheet::isSeats, "capacity", "rated capacity"),
                SheetColumn.of(Literals.BUS__GVWR_KG, "gvwr", "gvw", "gross vehicle weight", "gross vehicle weight rating", "weight rating"),
                SheetColumn.of(Literals.BUS__OWNERSHIP, "owner", "ownership", "owned or leased", "owned leased", "titled to")
                        .saying("owned", "own", "district", "school district", "district owned", "district-owned", "o")
                        .saying("leased", "lease", "lessor", "rented", "l").saying("contractor", "contractor's", "contracted", "contract", "c")
                        .saying("not told", UNKNOWN),
                SheetColumn.of(Literals.BUS__LIEN, "lien on title", "liens").saying("yes", "y", "x", "true").saying("no", "n", "none", "false")
                        .saying("not told", UNKNOWN),
                SheetColumn.of(Literals.BUS__DAYS_PER_WEEK, "days wk", "days per week", "days week", "days a week", "service days per week"),
                SheetColumn.of(Literals.BUS__ENGINE_SERIAL, "engine serial", "engine sn", "esn", "engine serial no"),
                SheetColumn.of(Literals.BUS__ENGINE_FAMILY, "epa engine family", "epa family", "engine family name"),
                SheetColumn.of(CommonPackage.Literals.SOURCED__NOTE, "notes", "remarks", "comments"));
    }

    /** Packs and tanks have a capacity, too. */
    private static boolean isSeats(String text) {
        return text.matches("\\d{1,3}") && Integer.parseInt(text) <= MOST_SEATS;
    }

    @Override
    public String example(SheetColumn column) {
        return Map.ofEntries(Map.entry(KEY, "B07"), Map.entry("role", "route"), Map.entry(BODY, "C"), Map.entry(FUEL, "diesel"),
                Map.entry("route", ""), Map.entry("modelYear", "2014"), Map.entry("engineModelYear", "2013"),
                Map.entry("inServiceYear", "2014"), Map.entry("odometerKm", "98210"), Map.entry(ANNUAL, "6105"),
                Map.entry("measuredKmPerL", "6.4"), Map.entry("seats", "72"), Map.entry("gvwrKg", "29800"), Map.entry("ownership", "owned"),
                Map.entry("lien", "no"), Map.entry("daysPerWeek", "5")).getOrDefault(column.id(), "");
    }

    @Override
    public boolean mayAddTypes() {
        return true;
    }

    /** A year that is planned has not been measured. */
    @Override
    public Quality quality(String field) {
        return field.equals(Literals.BUS__PLANNED_RETIREMENT_YEAR.getName()) ? Quality.ASSUMED : Quality.MEASURED;
    }

    @Override
    public void read(MappedSheet sheet, SheetOutcome outcome) {
        Reading reading = new Reading(sheet, outcome, columns(outcome.study()));
        sheet.rows().forEach(reading::row);
        reading.tellUnknownWords();
        reading.tellOthers();
    }

    /** One list being read. */
    private static final class Reading {
        private final SheetOutcome outcome;
        private final Study study;
        private final List<SheetColumn> columns;
        private final FieldValue values;
        private final TypeGuess types;
        private final StepsOfBody steps;
        private final RowKeys keys;
        private final ElementIndex<Bus> known;
        private final Map<SheetColumn, Map<String, Integer>> unknownWords = new LinkedHashMap<>();

        Reading(MappedSheet sheet, SheetOutcome outcome, List<SheetColumn> columns) {
            this.outcome = outcome;
            this.study = outcome.study();
            this.columns = columns;
            this.values = new FieldValue(study);
            this.types = new TypeGuess(study);
            this.steps = new StepsOfBody(study);
            this.keys = new RowKeys(sheet, KEY);
            this.known = new ElementIndex<>(study.getBuses());
        }

        void row(MappedRow row) {
            RowReading cells = outcome.reading(row);
            String name = cells.of(() -> keys.of(row), "");
            if (cells.isSound()) {
                bus(row, name);
            } else {
                columns.stream().filter(c -> c.field().isPresent() && !c.id().equals(KEY)).forEach(c -> cells.of(() -> value(row, c), null));
                List.of(START, UPKEEP).forEach(id -> cells.number(id, 0));
                cells.of(() -> annualKm(row), null);
            }
        }

        private void bus(MappedRow row, String name) {
            Bus bus = known.find(name).orElseGet(() -> added(row, name));
            double knownKm = bus.getOdometerKm();
            columns.stream().filter(c -> c.field().isPresent() && !c.id().equals(KEY)).forEach(column -> outcome.attempt(row,
                    () -> value(row, column).ifPresent(v -> outcome.set(row.number(), bus, column.field().get(), v))));
            outcome.attempt(row, () -> type(row, bus));
            leaveRoute(row, bus);
            steps.follow(row.number(), bus, outcome);
            outcome.attempt(row, () -> odometer(row, bus, knownKm));
            outcome.attempt(row, () -> annual(row, bus));
        }

        /** A spare or activity bus has the route that its row names, and none where it names none. */
        private void leaveRoute(MappedRow row, Bus bus) {
            if (row.has(ROLE) && row.knows(ROUTE) && !row.has(ROUTE) && bus.getRole() != Role.ROUTE && bus.getRoute() != null) {
                outcome.remark("Row " + row.number() + ": " + bus.getName() + " is no longer on route " + bus.getRoute().getName() + "; its row says "
                        + bus.getRole().getLiteral() + " and names no route.");
                outcome.set(row.number(), bus, Literals.BUS__ROUTE, null);
            }
        }

        /** The value in a column; empty where a name stands in place of a word. */
        private Optional<Object> value(MappedRow row, SheetColumn column) throws CellFault {
            Optional<String> text = column.field().filter(MAYBE_NAMES::contains).isEmpty() ? Optional.empty() : row.text(column.id());
            if (text.isEmpty() || column.says(text.get())) {
                return values.of(row, column);
            }
            unknownWords.computeIfAbsent(column, c -> new TreeMap<>()).merge(text.get(), 1, Integer::sum);
            return Optional.empty();
        }

        private Bus added(MappedRow row, String name) {
            Bus bus = FleetFactory.eINSTANCE.createBus();
            bus.setName(name);
            study.getBuses().add(bus);
            outcome.added(row.number(), bus);
            known.withNumberOf(name).ifPresent(other -> outcome.remark("Row " + row.number() + ": “" + name + "” is taken for a new bus, though “"
                    + other.getName() + "” of the study has the same number; write it so where it is the same bus."));
            return bus;
        }

        /** The type that body and fuel tell, where the row names none and the bus has none that fits. */
        private void type(MappedRow row, Bus bus) throws CellFault {
            Optional<String> body = row.text(BODY);
            Optional<String> fuel = row.text(FUEL);
            if (row.has(TYPE) || body.isEmpty() && fuel.isEmpty()) {
                return;
            }
            Optional<VehicleType> named = body.flatMap(types::named);
            if (named.isPresent()) {
                named(row, bus, named.get(), fuel);
            } else {
                fitting(row, bus, body, fuel);
            }
        }

        private void named(MappedRow row, Bus bus, VehicleType named, Optional<String> fuel) throws CellFault {
            if (fuel.isPresent() && !TypeGuess.burns(named, fuel.get())) {
                throw row.wrong(FUEL, "“" + named.getName() + "” runs on " + TypeGuess.fuel(named) + ", but the row says “" + fuel.get()
                        + "”; mend one of the two.");
            }
            outcome.set(row.number(), BODY, bus, Literals.BUS__TYPE, named);
        }

        private void fitting(MappedRow row, Bus bus, Optional<String> body, Optional<String> fuel) throws CellFault {
            if (body.isPresent() && !TypeGuess.isBody(body.get())) {
                throw row.wrong(BODY, "“" + body.get() + "” is neither a body type, which are " + TypeGuess.bodies()
                        + ", nor the name of a vehicle type of the study, which has " + types.names() + "; write one of them.");
            }
            List<VehicleType> known = types.fitting(body, fuel);
            List<VehicleType> fitting = known.isEmpty() ? List.of(newType(row, body, fuel)) : known;
            if (fitting.stream().noneMatch(t -> t == bus.getType())) {
                VehicleType type = types.nearest(fitting, bus.getModelYear()).orElseThrow(() -> row.wrong(body.isPresent() ? BODY : FUEL,
                        "Several vehicle types fit, " + ElementIndex.names(fitting) + "; add a column “Vehicle type” that names one."));
                outcome.set(row.number(), bus, Literals.BUS__TYPE, type);
                if (fitting.size() > 1) {
                    outcome.remark("Row " + row.number() + ": of the vehicle types that fit, " + bus.getName() + " gets “" + type.getName()
                            + "”, as buses of about its model year have.");
                }
            }
        }

        /** A type that the study lacks, if it may come with the list. */
        private VehicleType newType(MappedRow row, Optional<String> body, Optional<String> fuel) throws CellFault {
            Optional<VehicleType> assumed = TypeGuess.assumed(body, fuel);
            if (assumed.isEmpty() || !outcome.addsTypes()) {
                throw row.wrong(body.isPresent() ? BODY : FUEL, "The study has no vehicle type" + body.map(b -> " with body “" + b + "”").orElse("")
                        + fuel.map(f -> " and fuel “" + f + "”").orElse("") + "; mend the row, or add the type on the page of vehicle types"
                        + (assumed.isPresent() ? ", or have it added here with assumed figures." : ".")
                        + fuel.filter(f -> !TypeGuess.isFuel(f)).map(f -> NearWords.hint(f, types.fuels())).orElse(""));
            }
            study.getVehicleTypes().add(assumed.get());
            outcome.assumed(row.number(), assumed.get(), AssumedTypes.SOURCE);
            outcome.remark("Row " + row.number() + ": vehicle type “" + assumed.get().getName() + "” is new; its figures are assumed, enter the maker's.");
            return assumed.get();
        }

        private void odometer(MappedRow row, Bus bus, double knownKm) throws CellFault {
            OptionalDouble end = outcome.reading(row).of(() -> row.number("odometerKm"), OptionalDouble.empty());
            end.ifPresent(km -> OdometerReadings.tellBelow(row.number(), km, bus.getName(), knownKm, outcome));
            OptionalDouble start = row.number(START);
            if (start.isPresent() && end.isPresent() && end.getAsDouble() < start.getAsDouble()) {
                throw row.wrong("odometerKm",
                        bus.getName() + " ends below its start by " + WholeFigures.distance(start.getAsDouble() - end.getAsDouble(), study)
                                + ": reversed, rolled over or a new odometer? Mend it, or clear the reading of a year before.");
            }
        }

        private static OptionalDouble annualKm(MappedRow row) throws CellFault {
            OptionalDouble km = row.number(ANNUAL);
            if (km.orElse(0) < 0) {
                throw row.fault(ANNUAL, "a distance of at least 0");
            }
            return km;
        }

        private void annual(MappedRow row, Bus bus) throws CellFault {
            OptionalDouble upkeep = outcome.reading(row).of(() -> row.number(UPKEEP), OptionalDouble.empty());
            OptionalDouble annual = annualKm(row);
            if (annual.isEmpty()) {
                if (upkeep.isPresent()) {
                    throw row.wrong(UPKEEP, "Upkeep of a year needs the distance of that year, a column “Annual distance”.");
                }
                return;
            }
            double routeKm = RouteYear.km(bus.getRoute());
            if (annual.getAsDouble() < CLEARLY_LESS * routeKm) {
                outcome.remark("Row " + row.number() + ": " + bus.getName() + " drove " + WholeFigures.distance(annual.getAsDouble(), study)
                        + " but its route asks for " + WholeFigures.distance(routeKm, study) + " in a year; its other distance is taken as zero.");
            }
            if (RouteYear.isUnknown(bus.getRoute())) {
                outcome.remark("Row " + row.number() + ": the route of " + bus.getName() + " has no runs yet, so its other distance stays as it is; import "
                        + "the route sheet, then this list again.");
            } else if (!row.has("otherKmPerYear")) {
                outcome.set(row.number(), bus, Literals.BUS__OTHER_KM_PER_YEAR, Math.max(0, annual.getAsDouble() - routeKm));
            }
            if (upkeep.isPresent() && annual.getAsDouble() > 0) {
                outcome.set(row.number(), bus, Literals.BUS__MEASURED_UPKEEP_PER_KM, upkeep.getAsDouble() / annual.getAsDouble());
            }
        }

        void tellUnknownWords() {
            unknownWords.forEach((column, texts) -> texts.forEach((text, rows) -> outcome.remark("“" + column.label() + "”: “" + text + "” in "
                    + rows + (rows == 1 ? " row" : " rows") + " is none of " + String.join(", ", column.choices()) + ", and is not taken in.")));
        }

        void tellOthers() {
            List<Bus> others = study.getBuses().stream().filter(b -> !keys.holds(b.getName())).toList();
            if (!others.isEmpty()) {
                outcome.remark("Buses of the study that the list does not name stay as they are: " + ElementIndex.names(others) + ".");
            }
        }
    }
}
