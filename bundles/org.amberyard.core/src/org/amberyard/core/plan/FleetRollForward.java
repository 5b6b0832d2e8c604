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
    private final PackRenewal renewal;
    private final RetireInstead retireInstead;

    private FleetRollForward(StudyInput study, PlanInput plan, DutyTable duty, PortFleet ports) {
        this.study = study;
        this.driving = new YearOfDriving(study, duty, ports);
        this.renewal = new PackRenewal(study);
        this.retireInstead = new RetireInstead(study, driving, UpkeepCalibrations.of(study, duty));
        PresentFleet present = new PresentFleet(study, duty, driving);
        this.fleet = new FleetPlaces(study,
                IntStream.range(0, study.buses().size()).mapToObj(place -> calibrated(place, present.bus(place))).toList());
        this.steps = new PlanSteps(study, plan, fleet);
        this.retires = new int[fleet.count()];
        Arrays.fill(retires, -1);
    }

    /** Buses with a measured fuel economy burn in the base year what their log says. */
    private Vehicle calibrated(int place, Vehicle bus) {
        return bus.calibrated(driving.fuelFactor(place, bus));
    }

    /** The fleet of a plan over the study. */
    public static FleetHistory of(StudyInput study, PlanInput plan, DutyTable duty, PortFleet ports) {
        FleetRollForward roll = new FleetRollForward(study, plan, duty, ports);
        for (int year = 0; year < study.years(); year++) {
            roll.steps.take(year);
            roll.applyRules(year);
            roll.drive(year);
        }
        return new FleetHistory(roll.years, roll.fleet.events(), roll.fleet.all());
    }

    private void applyRules(int year) {
        for (int place = 0; place < fleet.count(); place++) {
            if (fleet.in(place).isPresent() && due(place, year)) {
                replaceByRule(place, year);
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
        OptionalInt marked = bus.retirementYear();
        if (vehicle.unit().equals(bus.name()) && marked.isPresent()) {
            return year >= marked.getAsInt();
        }
        VehiclePrices prices = study.types().get(vehicle.type()).prices();
        return prices.due(vehicle.ageYears(year), vehicle.odometerKm(), bus.role());
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
        PackBill bill = renewal.bill(worn, year, driving.leastHealth(year, place, worn.type()));
        Vehicle renewed = renewal.renewed(worn, cause, bill);
        Optional<RetireInstead.Choice> cheaper = retireInstead.of(year + 1, place, worn, renewed, bill.paid())
                .filter(RetireInstead.Choice::retires);
        if (cheaper.isPresent() && !steps.awaited(place, year + 1)) {
            fleet.happened(new FleetEvent.RetiredForPack(year, place, worn, cause, cheaper.get().keptPerYear(),
                    cheaper.get().nextPerYear()));
            retires[place] = year + 1;
        } else {
            fleet.happened(new FleetEvent.PackReplaced(year, place, worn, cause, bill));
            fleet.becomes(place, renewed);
        }
    }
}
