package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.amberyard.core.air.Emissions;
import org.amberyard.core.air.Masses;

/**
 * The engine buses that a plan replaces, with what that does to the air: the project of a grant. What the baseline does in the
 * same year and place as well is no part of it. A bus that moves on into another place counts there as the new one.
 */
public final class ReplacedBuses {
    private final StudyInput study;
    private final PlanResult plan;
    private final PlanResult baseline;
    private final YearOfDriving driving;
    private final BusAir air;
    private final RetirementMarks marks;

    private ReplacedBuses(StudyResult result, int plan) {
        this.study = result.input();
        this.plan = result.plans().get(plan);
        this.baseline = result.baseline();
        this.driving = new YearOfDriving(study, result.duty(), new PortFleet(study.depot(), this.plan.plan().ports()));
        this.air = new BusAir(study, result.duty());
        this.marks = new RetirementMarks(study);
    }

    /** Replaced buses of a plan by its place, in the order of the changes; none for the baseline. */
    public static List<ReplacedBus> of(StudyResult result, int plan) {
        ReplacedBuses search = new ReplacedBuses(result, plan);
        List<ReplacedBus> found = new ArrayList<>();
        for (FleetEvent event : search.plan.fleet().events()) {
            boolean bought = event instanceof FleetEvent.Bought;
            if (bought || event instanceof FleetEvent.Moved) {
                search.replaced(event, bought).ifPresent(found::add);
            }
        }
        return List.copyOf(found);
    }

    private Optional<ReplacedBus> replaced(FleetEvent event, boolean bought) {
        Optional<Vehicle> old = leftFrom(plan, event.year(), event.place()).filter(v -> study.types().get(v.type())
                .engine().isPresent());
        return old.filter(v -> !baselineDoesSo(event, v)).flatMap(v -> plan.fleet().inYear(event.year()).stream()
                .filter(r -> r.place() == event.place()).findFirst().map(now -> replaced(v, now, bought)));
    }

    /** The bus that leaves a place in a year. */
    private static Optional<Vehicle> leftFrom(PlanResult of, int year, int place) {
        return of.fleet().events().stream().filter(e -> e.year() == year && (e instanceof FleetEvent.Moved moved
                ? moved.from() == place : e instanceof FleetEvent.Sold && e.place() == place)).map(FleetEvent::vehicle).findFirst();
    }

    private boolean baselineDoesSo(FleetEvent event, Vehicle old) {
        Optional<Vehicle> leaves = leftFrom(baseline, event.year(), event.place());
        return leaves.filter(v -> v.unit().equals(old.unit())).isPresent() && baseline.fleet().inYear(event.year()).stream()
                .anyMatch(r -> r.place() == event.place() && r.vehicle().type() == event.vehicle().type());
    }

    private ReplacedBus replaced(Vehicle old, VehicleYear now, boolean bought) {
        VehicleYear kept = driving.of(now.year(), now.place(), old).record();
        int retires = retires(old, now);
        Optional<VehicleYear> instead = retires > now.year() ? Optional.empty() : baseline.fleet().inYear(now.year()).stream()
                .filter(r -> r.place() == now.place()).findFirst();
        VehicleYear before = instead.orElse(kept);
        boolean drives = before.use().km() > 0;
        return new ReplacedBus(kept, instead, now, bought, retires, drives ? air.of(before) : Emissions.NONE,
                drives ? air.of(now) : Emissions.NONE);
    }

    /** Year in which a bus leaves its place in the baseline, or by the rule after the study. */
    private int retires(Vehicle old, VehicleYear now) {
        boolean present = baseline.fleet().inYear(now.year()).stream().anyMatch(r -> isThere(r, old, now.place()));
        if (!present) {
            return now.year();
        }
        int last = now.year();
        for (VehicleYear record : baseline.fleet().years()) {
            last = isThere(record, old, now.place()) ? record.year() : last;
        }
        return last < study.years() - 1 ? last + 1 : afterStudy(now.place());
    }

    private static boolean isThere(VehicleYear record, Vehicle bus, int place) {
        return record.place() == place && record.vehicle().unit().equals(bus.unit());
    }

    /** A bus that the baseline still has at the end goes on as in its last year until the rule replaces it. */
    private int afterStudy(int place) {
        Optional<Vehicle> kept = baseline.fleet().fleetAtEnd().get(place);
        BusInput bus = study.buses().get(place);
        if (kept.isEmpty()) {
            return study.years();
        }
        Vehicle vehicle = kept.get();
        OptionalInt marked = marks.after(study.years() - 1, vehicle);
        if (marked.isPresent()) {
            return marked.getAsInt();
        }
        double kmPerYear = baseline.fleet().inYear(study.years() - 1).stream().filter(r -> r.place() == place)
                .mapToDouble(r -> r.use().km()).sum();
        double left = study.types().get(vehicle.type()).prices().yearsLeft(vehicle.ageYears(study.years()),
                vehicle.odometerKm(), kmPerYear, bus.role());
        return study.years() + (int) Math.ceil(Math.max(0, left));
    }

    /** What all of them reduce in a year at their exhaust pipes, each in the year of its change. */
    public static Masses reducedPerYear(List<ReplacedBus> buses) {
        return buses.stream().map(ReplacedBus::reducedExhaust).reduce(Masses.NONE, Masses::plus);
    }

    /** What all of them reduce at their exhaust pipes over the remaining lives of the old buses. */
    public static Masses reducedInLife(List<ReplacedBus> buses) {
        return buses.stream().map(ReplacedBus::lifetimeExhaust).reduce(Masses.NONE, Masses::plus);
    }
}
