package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.amberyard.core.battery.FullCycleCount;
import org.amberyard.core.duty.DutyTable;

/**
 * Rolls the fleet forward year by year: the plan's steps first, then the rules, then a year of driving.
 *
 * <p>The rule replaces a bus that its owner has marked for a year from that year on, else one that has reached the age or
 * the odometer of its type. A place that the plan names is left to the plan until its step has come.
 */
public final class FleetRollForward {
    private final StudyInput study;
    private final PlanInput plan;
    private final YearOfDriving driving;
    private final Vehicle[] places;
    private final List<FleetEvent> events = new ArrayList<>();
    private final List<VehicleYear> years = new ArrayList<>();
    private final Map<Integer, Integer> bought = new HashMap<>();
    private final Map<Integer, Integer> lastStep = new HashMap<>();

    private FleetRollForward(StudyInput study, PlanInput plan, DutyTable duty, PortFleet ports) {
        this.study = study;
        this.plan = plan;
        this.driving = new YearOfDriving(study, duty, ports);
        this.places = study.buses().stream().map(b -> present(study, duty, b)).toArray(Vehicle[]::new);
        plan.replacements().forEach(r -> lastStep.merge(r.place(), r.year(), Math::max));
    }

    /** The fleet of a plan over the study. */
    public static FleetHistory of(StudyInput study, PlanInput plan, DutyTable duty, PortFleet ports) {
        FleetRollForward roll = new FleetRollForward(study, plan, duty, ports);
        for (int year = 0; year < study.years(); year++) {
            roll.takeSteps(year);
            roll.applyRules(year);
            roll.drive(year);
        }
        List<Optional<Vehicle>> end = new ArrayList<>();
        for (Vehicle vehicle : roll.places) {
            end.add(Optional.ofNullable(vehicle));
        }
        return new FleetHistory(roll.years, roll.events, end);
    }

    /** A bus of today; its pack's cycles are those that its odometer stands for. */
    private static Vehicle present(StudyInput study, DutyTable duty, BusInput bus) {
        double age = Math.max(0, -bus.inServiceYear());
        double cycles = study.types().get(bus.type()).electric()
                .map(e -> FullCycleCount.of(bus.odometerKm() * duty.perKm(bus.type()).batteryKwh(), e.battery().nominalKwh()))
                .orElse(0.0);
        return new Vehicle(bus.name(), bus.type(), bus.inServiceYear(), bus.odometerKm(), age, cycles, 0);
    }

    private void takeSteps(int year) {
        for (PlanInput.Replacement step : plan.replacements()) {
            if (step.year() == year) {
                take(step);
            }
        }
    }

    private void take(PlanInput.Replacement step) {
        Vehicle outgoing = places[step.place()];
        places[step.place()] = null;
        if (outgoing != null) {
            release(step, outgoing);
        }
        int outgoingType = outgoing == null ? study.buses().get(step.place()).type() : outgoing.type();
        step.newType().ifPresent(type -> buy(step.year(), step.place(), type, outgoingType, Optional.of(step)));
    }

    private void release(PlanInput.Replacement step, Vehicle outgoing) {
        if (step.cascadeTo().isEmpty()) {
            events.add(new FleetEvent.Sold(step.year(), step.place(), outgoing));
            return;
        }
        int target = step.cascadeTo().getAsInt();
        if (places[target] != null) {
            events.add(new FleetEvent.Sold(step.year(), target, places[target]));
        }
        places[target] = outgoing;
        events.add(new FleetEvent.Moved(step.year(), target, outgoing, step.place()));
    }

    private void buy(int year, int place, int type, int outgoingType, Optional<PlanInput.Replacement> step) {
        int generation = bought.merge(place, 1, Integer::sum);
        String unit = study.buses().get(place).name() + "-" + (generation + 1);
        Vehicle vehicle = new Vehicle(unit, type, year, 0, 0, 0, 0);
        places[place] = vehicle;
        events.add(new FleetEvent.Bought(year, place, vehicle, outgoingType, step));
    }

    private void applyRules(int year) {
        for (int place = 0; place < places.length; place++) {
            if (places[place] != null && lastStep.getOrDefault(place, -1) < year && due(place, year)) {
                replaceByRule(place, year);
            }
        }
    }

    private boolean due(int place, int year) {
        BusInput bus = study.buses().get(place);
        Vehicle vehicle = places[place];
        OptionalInt marked = bus.retirementYear();
        if (vehicle.unit().equals(bus.name()) && marked.isPresent()) {
            return year >= marked.getAsInt();
        }
        VehiclePrices prices = study.types().get(vehicle.type()).prices();
        return prices.due(vehicle.ageYears(year), vehicle.odometerKm(), bus.role());
    }

    private void replaceByRule(int place, int year) {
        Vehicle outgoing = places[place];
        events.add(new FleetEvent.Sold(year, place, outgoing));
        buy(year, place, study.types().get(outgoing.type()).successor(), outgoing.type(), Optional.empty());
    }

    private void drive(int year) {
        for (int place = 0; place < places.length; place++) {
            if (places[place] != null) {
                YearOfDriving.Driven driven = driving.of(year, place, places[place]);
                years.add(driven.record());
                driven.packReplaced().ifPresent(events::add);
                places[place] = driven.after();
            }
        }
    }
}
