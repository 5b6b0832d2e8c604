package org.amberyard.study.roll;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.amberyard.core.plan.FleetEvent;
import org.amberyard.core.plan.FleetHistory;
import org.amberyard.core.plan.StandingFleet;
import org.amberyard.core.plan.Vehicle;
import org.amberyard.core.plan.VehicleYear;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.FleetPackage.Literals;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PlansFactory;
import org.amberyard.model.plans.Replacement;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.CombustionType;
import org.amberyard.model.vehicles.VehicleType;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Writes the fleet that stands at the start of the new base year into the list of buses: a row is a place, as before. */
final class FleetRoll {
    private static final String BY_PLAN = "by the plan that was carried out";
    /** What is told of a bus and goes with it. */
    private static final List<EAttribute> PAPERS = List.of(Literals.BUS__SEATS, Literals.BUS__GVWR_KG, Literals.BUS__OWNERSHIP,
            Literals.BUS__LIEN, Literals.BUS__DAYS_PER_WEEK, Literals.BUS__ENGINE_SERIAL, Literals.BUS__ENGINE_FAMILY);
    private static final String EMPTY = "the place is empty until a step fills it";
    private static final String STANDS = "of the bus that stands there now";

    private final Study study;
    private final RollLog log;
    private final FleetHistory fleet;
    private final StandingFleet standing;
    private final int oldBase;
    private final int newBase;
    private final int oldEnd;
    private final Map<String, Bus> before = new HashMap<>();
    private final Map<String, Bus> rows = new HashMap<>();
    private final List<Bus> empty = new ArrayList<>();
    private final Map<String, Integer> engineYears = new HashMap<>();
    private final BusRecords records;

    /** @param oldEnd first year after the old study; a row in service from then on holds a place that a step fills */
    FleetRoll(Study study, RollLog log, FleetHistory fleet, int oldBase, int newBase, int oldEnd) {
        this.study = study;
        this.log = log;
        this.fleet = fleet;
        this.standing = new StandingFleet(fleet, newBase - oldBase);
        this.oldBase = oldBase;
        this.newBase = newBase;
        this.oldEnd = oldEnd;
        study.getBuses().stream().filter(bus -> bus.getInServiceYear() <= oldBase)
                .forEach(bus -> before.put(bus.getName(), EcoreUtil.copy(bus)));
        study.getBuses().stream().filter(bus -> bus.getInServiceYear() < oldEnd)
                .forEach(bus -> rows.put(bus.getName(), EcoreUtil.copy(bus)));
        study.getBuses().stream().filter(bus -> bus.getEngineModelYear() > 0)
                .forEach(bus -> engineYears.put(bus.getName(), bus.getEngineModelYear()));
        this.records = new BusRecords(study, log, before, oldBase);
    }

    void write() {
        List<Bus> places = List.copyOf(study.getBuses());
        List<Optional<Vehicle>> buses = standing.buses();
        for (int place = 0; place < places.size(); place++) {
            Bus bus = places.get(place);
            int here = place;
            buses.get(place).ifPresentOrElse(vehicle -> write(bus, here, vehicle), () -> leave(bus));
        }
        empty.forEach(bus -> rename(bus, places));
        fleet.events().stream().filter(e -> e instanceof FleetEvent.Moved && e.year() <= newBase - oldBase)
                .forEach(e -> log.remark("Bus " + e.vehicle().unit() + " moves to another place in " + (oldBase + e.year())
                        + ": its shop tasks are counted afresh there, so some fall in other years."));
        standing.retiringForPack().stream().filter(place -> buses.get(place).isPresent()).map(places::get)
                .forEach(bus -> log.set(bus, Literals.BUS__PLANNED_RETIREMENT_YEAR, newBase,
                        "its pack is due and not worth it, so the bus goes at the start of the year"));
    }

    private void write(Bus bus, int place, Vehicle vehicle) {
        boolean stood = before.containsKey(vehicle.unit()) && vehicle.unit().equals(bus.getName());
        records.write(bus, vehicle);
        if (!stood) {
            identity(bus, vehicle, place);
        }
        log.set(bus, Literals.BUS__ODOMETER_KM, vehicle.odometerKm(), "driven as planned in the years that are over");
        if (bus.getMeasuredHealth() > 0) {
            log.set(bus, Literals.BUS__MEASURED_HEALTH, 0.0, "the bus record goes on from it");
            log.set(bus, Literals.BUS__MEASURED_HEALTH_YEAR, 0, "the bus record goes on from it");
        }
        if (bus.getMeasuredUpkeepPerKm() > 0) {
            log.set(bus, Literals.BUS__MEASURED_UPKEEP_PER_KM, 0.0, "in the upkeep factor of its type");
        }
    }

    /** Another bus stands in the place than at the old base date; one that the list had for a later year or another place is known. */
    private void identity(Bus bus, Vehicle vehicle, int place) {
        VehicleType type = study.getVehicleTypes().get(vehicle.type());
        Optional<Bus> known = Optional.ofNullable(rows.get(vehicle.unit())).filter(b -> b.getType() == type);
        boolean engine = type instanceof CombustionType;
        int inService = oldBase + vehicle.inServiceYear();
        log.set(bus, Literals.BUS__NAME, vehicle.unit(), (known.isPresent() ? "moved here " : "bought ") + BY_PLAN);
        log.set(bus, Literals.BUS__TYPE, type, BY_PLAN);
        log.set(bus, Literals.BUS__IN_SERVICE_YEAR, inService, BY_PLAN);
        log.set(bus, Literals.BUS__VIN, known.map(Bus::getVin).orElse(null), STANDS);
        log.set(bus, Literals.BUS__MODEL_YEAR, known.map(Bus::getModelYear).orElse(inService), STANDS);
        log.set(bus, Literals.BUS__ENGINE_MODEL_YEAR, engine ? engineYear(vehicle, known, inService) : 0,
                STANDS);
        log.set(bus, Literals.BUS__PLANNED_RETIREMENT_YEAR, known.map(Bus::getPlannedRetirementYear).filter(y -> y >= newBase).orElse(0),
                STANDS);
        log.set(bus, Literals.BUS__MEASURED_KM_PER_L, engine && vehicle.fuelFactor() != 1 ? economy(vehicle, place) : 0.0,
                STANDS);
        PAPERS.forEach(f -> log.set(bus, f, known.map(b -> b.eGet(f)).orElse(f.getDefaultValue()), STANDS));
    }

    /** Model year of its engine; none where the bus is known and its chassis stands in for it. */
    private int engineYear(Vehicle vehicle, Optional<Bus> known, int inService) {
        return known.filter(b -> b.getModelYear() > 0).map(Bus::getEngineModelYear)
                .orElseGet(() -> engineYears.getOrDefault(vehicle.unit(), inService));
    }

    /** Fuel economy that the model has for a bus in a place. */
    private double economy(Vehicle vehicle, int place) {
        return fleet.years().stream().filter(v -> v.place() == place && v.vehicle().unit().equals(vehicle.unit()))
                .filter(v -> v.use().fuelL() > 0).map(VehicleYear::use).map(use -> use.km() / use.fuelL()).findFirst().orElse(0.0);
    }

    /** No bus stands in the place. */
    private void leave(Bus bus) {
        boolean joins = bus.getInServiceYear() >= newBase;
        if (bus.getInServiceYear() == newBase) {
            join(bus);
        } else if (named(bus) && (!joins || bus.getInServiceYear() == oldEnd)) {
            keepEmpty(bus);
        } else if (!joins) {
            log.goes(bus, "retired without another " + BY_PLAN);
            log.remark("As " + bus.getName() + " goes from the list, shop tasks of the buses behind it fall in other months.");
            records.forget(bus);
            EcoreUtil.delete(bus, true);
        }
    }

    /** Nothing of the bus that has gone is left in its place, which the study counts as empty through all its years. */
    private void keepEmpty(Bus bus) {
        records.forget(bus);
        log.set(bus, Literals.BUS__IN_SERVICE_YEAR, newBase + study.getSettings().getHorizonYears(), EMPTY);
        int filled = filled(bus);
        log.set(bus, Literals.BUS__MODEL_YEAR, filled, EMPTY);
        log.set(bus, Literals.BUS__ENGINE_MODEL_YEAR, bus.getType() instanceof CombustionType ? filled : 0, EMPTY);
        List.of(Literals.BUS__VIN, Literals.BUS__ODOMETER_KM, Literals.BUS__PLANNED_RETIREMENT_YEAR,
                Literals.BUS__MEASURED_KM_PER_L, Literals.BUS__MEASURED_UPKEEP_PER_KM,
                Literals.BUS__MEASURED_HEALTH, Literals.BUS__MEASURED_HEALTH_YEAR)
                .forEach(field -> log.set(bus, field, field.getEAttributeType().getDefaultValue(), EMPTY));
        PAPERS.forEach(field -> log.set(bus, field, field.getDefaultValue(), EMPTY));
        empty.add(bus);
    }

    /** The bus of an empty place may have taken its name to another; its later buses are numbered there, so a letter tells the two. */
    private void rename(Bus bus, List<Bus> places) {
        Set<String> taken = places.stream().filter(b -> b != bus).map(Bus::getName).collect(Collectors.toSet());
        String name = bus.getName();
        for (char mark = 'b'; taken.contains(name); mark++) {
            name = bus.getName() + mark;
        }
        log.set(bus, Literals.BUS__NAME, name, "its bus has taken the name to another place");
    }

    private boolean named(Bus bus) {
        return steps(bus).findAny().isPresent();
    }

    private Stream<Replacement> steps(Bus bus) {
        return study.getPlans().stream().flatMap(p -> p.getReplacements().stream())
                .filter(r -> r.getBus() == bus || r.getCascadeTo() == bus);
    }

    /** First year in which a step fills a place; a bus bought for it then has that model year. */
    private int filled(Bus place) {
        return steps(place).mapToInt(Replacement::getYear).min().orElse(newBase);
    }

    /** A bus of the base year stands from its start, so one that the fleet grows by in this year becomes a step of each plan. */
    private void join(Bus bus) {
        for (Plan plan : study.getPlans()) {
            if (plan.getReplacements().stream().noneMatch(r -> r.getBus() == bus)) {
                Replacement step = PlansFactory.eINSTANCE.createReplacement();
                step.setYear(newBase);
                step.setBus(bus);
                step.setNewType(bus.getType());
                plan.getReplacements().add(step);
                log.added(step, "the fleet grows by the bus in the new base year");
            }
        }
        log.set(bus, Literals.BUS__IN_SERVICE_YEAR, newBase + 1, "steps of the plans buy it in " + newBase);
    }

    /** Buses whose place has another bus than at the old base date, or none. */
    Set<Integer> changedPlaces() {
        return standing.changedPlaces();
    }
}
