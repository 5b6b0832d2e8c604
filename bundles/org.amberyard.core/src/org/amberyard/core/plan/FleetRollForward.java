package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.amberyard.core.battery.PackReplacement;
import org.amberyard.core.duty.DutyTable;

/**
 * Rolls the fleet forward year by year: the plan's steps first, then the rules, then a year of driving.
 *
 * <p>A place of which the present fleet says that it is in service from a later year stays empty until then: the fleet grows.
 *
 * <p>The rule replaces a bus that its owner has marked for a year from that year on, else one that has reached the age or
 * the odometer of its type or whose pack is not worth replacing any more. A place that the plan names is left to the plan until
 * its step has come.
 */
public final class FleetRollForward {
    private final StudyInput study;
    private final YearOfDriving driving;
    private final FleetPlaces fleet;
    private final PlanSteps steps;
    private final List<VehicleYear> years = new ArrayList<>();
    private final int[] retires;
    private final RetirementMarks marks;
    private final RenewOrRetire packs;
    private final List<PackDecision> decisions = new ArrayList<>();

    private FleetRollForward(StudyInput study, PlanInput plan, DutyTable duty, PortFleet ports, StudyFigures figures) {
        this.study = study;
        this.driving = new YearOfDriving(study, duty, ports);
        this.packs = new RenewOrRetire(study, driving, figures);
        PackSoFar soFar = new PackSoFar(study, duty, driving);
        PresentFleet present = new PresentFleet(study, soFar);
        this.fleet = new FleetPlaces(study, soFar,
                IntStream.range(0, study.buses().size())
                        .mapToObj(place -> present.standing(place).map(bus -> calibrated(place, bus))).toList());
        this.steps = new PlanSteps(study, plan, fleet);
        this.retires = new int[fleet.count()];
        Arrays.fill(retires, -1);
        this.marks = new RetirementMarks(study);
    }

    /** Buses with a measured fuel economy burn in the base year what their log says. */
    private Vehicle calibrated(int place, Vehicle bus) {
        return bus.calibrated(driving.fuelFactor(place, bus));
    }

    /** The fleet of a plan over the study. */
    public static FleetHistory of(StudyInput study, PlanInput plan, DutyTable duty, PortFleet ports) {
        return of(study, plan, duty, ports, StudyFigures.of(study, duty));
    }

    static FleetHistory of(StudyInput study, PlanInput plan, DutyTable duty, PortFleet ports, StudyFigures figures) {
        FleetRollForward roll = new FleetRollForward(study, plan, duty, ports, figures);
        for (int year = 0; year < study.years(); year++) {
            roll.steps.take(year);
            roll.applyRules(year);
            roll.drive(year);
        }
        return new FleetHistory(roll.years, roll.fleet.events(), roll.fleet.all(), roll.decisions);
    }

    private void applyRules(int year) {
        for (int place = 0; place < fleet.count(); place++) {
            if (fleet.in(place).isPresent() && due(place, year)) {
                replaceByRule(place, year);
            } else if (study.buses().get(place).inServiceYear() == year && year > 0 && !steps.names(place)) {
                grow(place, year);
            }
        }
    }

    /** True when the rule replaces the bus in a place; not while a step for the place is still to come or has just come. */
    private boolean due(int place, int year) {
        if (steps.awaited(place, year) || fleet.arrivedSince(place, year)) {
            return false;
        }
        if (retires[place] == year) {
            return true;
        }
        BusInput bus = study.buses().get(place);
        Vehicle vehicle = fleet.in(place).orElseThrow();
        OptionalInt marked = marks.after(fleet.arrived(place), vehicle);
        if (marked.isPresent()) {
            return year >= marked.getAsInt();
        }
        VehiclePrices prices = study.types().get(vehicle.type()).prices();
        return prices.due(vehicle.ageYears(year), vehicle.odometerKm(), bus.role());
    }

    /** The fleet grows by a bus, unless the plan says how. */
    private void grow(int place, int year) {
        int type = study.buses().get(place).type();
        fleet.buy(year, place, type, type, Optional.empty());
    }

    private void replaceByRule(int place, int year) {
        int outgoingType = fleet.in(place).orElseThrow().type();
        fleet.sell(year, place);
        fleet.buy(year, place, study.types().get(outgoingType).successor(), outgoingType, Optional.empty());
    }

    private void drive(int year) {
        for (int place = 0; place < fleet.count(); place++) {
            int here = place;
            fleet.in(place).ifPresent(bus -> drive(year, here, bus));
        }
    }

    private void drive(int year, int place, Vehicle bus) {
        YearOfDriving.Driven driven = driving.of(year, place, bus);
        years.add(driven.record());
        fleet.becomes(place, driven.after());
        driven.packDue().filter(cause -> stays(place, year + 1))
                .ifPresent(cause -> renewPack(year, place, driven.after(), cause));
    }

    private boolean stays(int place, int nextYear) {
        return nextYear < study.years() && !steps.touch(place, nextYear) && !due(place, nextYear);
    }

    /** A new pack, or the bus retires, unless the plan still has a step for its place. */
    private void renewPack(int year, int place, Vehicle worn, PackReplacement.Cause cause) {
        PackDecision decision = packs.decide(year, place, worn, cause, steps.awaited(place, year + 1));
        decisions.add(decision);
        fleet.happened(packs.event(decision));
        if (decision.retires()) {
            retires[place] = year + 1;
        } else {
            fleet.becomes(place, decision.renewed());
        }
    }
}
