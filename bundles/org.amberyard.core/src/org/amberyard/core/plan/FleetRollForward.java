package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
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
    private final PlanInput plan;
    private final YearOfDriving driving;
    private final Vehicle[] places;
    private final List<FleetEvent> events = new ArrayList<>();
    private final List<VehicleYear> years = new ArrayList<>();
    private final Map<Integer, Integer> bought = new HashMap<>();
    private final Map<Integer, Integer> lastStep = new HashMap<>();
    private final int[] arrived;
    private final int[] retires;
    private final PackRenewal renewal;
    private final RetireInstead retireInstead;

    private FleetRollForward(StudyInput study, PlanInput plan, DutyTable duty, PortFleet ports) {
        this.study = study;
        this.plan = plan;
        this.driving = new YearOfDriving(study, duty, ports);
        this.renewal = new PackRenewal(study);
        this.retireInstead = new RetireInstead(study);
        PresentFleet present = new PresentFleet(study, duty, driving);
        this.places = IntStream.range(0, study.buses().size()).mapToObj(present::bus).toArray(Vehicle[]::new);
        calibrate();
        this.arrived = new int[places.length];
        Arrays.fill(arrived, -1);
        this.retires = new int[places.length];
        Arrays.fill(retires, -1);
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

    /** Buses with a measured fuel economy burn in the base year what their log says. */
    private void calibrate() {
        for (int place = 0; place < places.length; place++) {
            places[place] = places[place].calibrated(driving.fuelFactor(place, places[place]));
        }
    }

    /** First all outgoing buses leave, then some move, then new ones come: the order of the steps does not matter. */
    private void takeSteps(int year) {
        List<PlanInput.Replacement> steps = plan.replacements().stream().filter(s -> s.year() == year).toList();
        Map<Integer, Vehicle> outgoing = new TreeMap<>();
        for (PlanInput.Replacement step : steps) {
            if (places[step.place()] != null) {
                outgoing.put(step.place(), places[step.place()]);
                places[step.place()] = null;
            }
        }
        steps.stream().filter(s -> outgoing.containsKey(s.place())).forEach(s -> release(s, outgoing.get(s.place())));
        steps.forEach(s -> s.newType().ifPresent(type -> take(s, type, outgoing.get(s.place()))));
    }

    private void take(PlanInput.Replacement step, int type, Vehicle outgoing) {
        if (places[step.place()] != null) {
            sell(step.year(), step.place(), false);
        }
        int outgoingType = outgoing == null ? study.buses().get(step.place()).type() : outgoing.type();
        buy(step.year(), step.place(), type, outgoingType, Optional.of(step));
    }

    private void release(PlanInput.Replacement step, Vehicle outgoing) {
        if (step.cascadeTo().isEmpty()) {
            events.add(new FleetEvent.Sold(step.year(), step.place(), outgoing, scraps(step)));
            return;
        }
        int target = step.cascadeTo().getAsInt();
        if (places[target] != null) {
            sell(step.year(), target, false);
        }
        places[target] = outgoing;
        arrived[target] = step.year();
        events.add(new FleetEvent.Moved(step.year(), target, outgoing, step.place()));
    }

    private boolean scraps(PlanInput.Replacement step) {
        return step.programme().isPresent() && study.programmes().get(step.programme().getAsInt()).scrapsOldBus()
                && study.programmes().get(step.programme().getAsInt()).paysIn(step.year());
    }

    private void sell(int year, int place, boolean scrapped) {
        events.add(new FleetEvent.Sold(year, place, places[place], scrapped));
        places[place] = null;
    }

    private void buy(int year, int place, int type, int outgoingType, Optional<PlanInput.Replacement> step) {
        int generation = bought.merge(place, 1, Integer::sum);
        String unit = study.buses().get(place).name() + "-" + (generation + 1);
        Vehicle vehicle = new Vehicle(unit, type, year, 0, Vehicle.Pack.FIRST, 1);
        places[place] = vehicle;
        events.add(new FleetEvent.Bought(year, place, vehicle, outgoingType, step));
    }

    private void applyRules(int year) {
        for (int place = 0; place < places.length; place++) {
            if (places[place] != null && due(place, year)) {
                replaceByRule(place, year);
            }
        }
    }

    /** True when the rule replaces the bus in a place; not while a step for the place is still to come or has just come. */
    private boolean due(int place, int year) {
        if (lastStep.getOrDefault(place, -1) >= year || arrived[place] >= year) {
            return false;
        }
        if (retires[place] == year) {
            return true;
        }
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
        int outgoingType = places[place].type();
        sell(year, place, false);
        buy(year, place, study.types().get(outgoingType).successor(), outgoingType, Optional.empty());
    }

    private void drive(int year) {
        for (int place = 0; place < places.length; place++) {
            if (places[place] != null) {
                YearOfDriving.Driven driven = driving.of(year, place, places[place]);
                years.add(driven.record());
                places[place] = driven.after();
                if (driven.packDue().isPresent() && stays(place, year + 1)) {
                    renewPack(year, place, driven.packDue().get());
                }
            }
        }
    }

    /** A new pack, or the bus retires, unless the plan still has a step for its place. */
    private void renewPack(int year, int place, PackReplacement.Cause cause) {
        Vehicle worn = places[place];
        PackBill bill = renewal.bill(worn, year, driving.leastHealth(year, place, worn.type()));
        RetireInstead.Choice choice = retireInstead.of(year, place, worn, bill.paid());
        if (choice.retires() && lastStep.getOrDefault(place, -1) <= year) {
            events.add(new FleetEvent.RetiredForPack(year, place, worn, cause, choice.packPerYear(), choice.busPerYear()));
            retires[place] = year + 1;
        } else {
            events.add(new FleetEvent.PackReplaced(year, place, worn, cause, bill));
            places[place] = renewal.renewed(worn, cause, bill);
        }
    }

    private boolean stays(int place, int nextYear) {
        boolean stepped = plan.replacements().stream().anyMatch(s -> s.year() == nextYear
                && (s.place() == place || s.cascadeTo().equals(OptionalInt.of(place))));
        return nextYear < study.years() && !stepped && !due(place, nextYear);
    }
}
