package org.amberyard.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.meta.UsedBus;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PlansFactory;
import org.amberyard.model.plans.Replacement;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.model.vehicles.VehicleType;

/**
 * The steps of a plan for one bus. They are changed as values, so that a change can be shown before it is made, and then written.
 *
 * @param bus place in the fleet
 * @param steps its steps, by year
 */
public record BusSteps(Bus bus, List<Step> steps) {

    /**
     * A step.
     *
     * @param year fiscal year at whose start it is taken
     * @param type type bought; null retires the bus without replacement
     * @param cascadeTo place that the outgoing bus takes over; null sells it
     * @param programmes programmes that pay a part of the new bus
     * @param element the element of the plan; null for a step that is still to be written
     */
    public record Step(int year, VehicleType type, Bus cascadeTo, List<Programme> programmes, Replacement element) {

        public Step {
            programmes = List.copyOf(programmes);
        }

        private static Step of(Replacement element) {
            return new Step(element.getYear(), element.getNewType(), element.getCascadeTo(), StepFunding.of(element), element);
        }

        private Step in(int otherYear) {
            return new Step(otherYear, type, cascadeTo, programmes, element);
        }

        /** Programmes pay for electric buses only. */
        private Step buying(VehicleType other) {
            return new Step(year, other, cascadeTo, other instanceof ElectricType ? programmes : List.of(), element);
        }

        private void write(Plan plan, Bus bus) {
            Replacement written = element == null ? PlansFactory.eINSTANCE.createReplacement() : element;
            if (element != null && equals(of(element))) {
                return;
            }
            written.setYear(year);
            written.setBus(bus);
            if (written.getNewType() != type) {
                UsedBus.forget(written);
            }
            written.setNewType(type);
            written.setCascadeTo(cascadeTo);
            StepFunding.set(written, programmes);
            if (element == null) {
                plan.getReplacements().add(written);
            }
        }
    }

    public BusSteps {
        steps = steps.stream().sorted(Comparator.comparingInt(Step::year)).toList();
    }

    /** The steps that a plan has for a bus. */
    public static BusSteps of(Plan plan, Bus bus) {
        return new BusSteps(bus, plan.getReplacements().stream().filter(r -> r.getBus() == bus).map(Step::of).toList());
    }

    /** The steps that a plan has for each of some buses. */
    public static Map<Bus, BusSteps> of(Plan plan, List<Bus> buses) {
        Map<Bus, List<Step>> steps = plan.getReplacements().stream().filter(r -> r.getBus() != null)
                .collect(Collectors.groupingBy(Replacement::getBus, Collectors.mapping(Step::of, Collectors.toList())));
        return buses.stream().collect(Collectors.toMap(b -> b, b -> new BusSteps(b, steps.getOrDefault(b, List.of()))));
    }

    /** The step in a year. */
    public Optional<Step> in(int year) {
        return steps.stream().filter(s -> s.year() == year).findFirst();
    }

    /** One step in a year in place of all; the one nearest to it is changed, with its programmes and where the old bus moves. */
    public BusSteps only(int year, VehicleType type) {
        Step changed = steps.stream().min(Comparator.comparingInt(s -> Math.abs(s.year() - year)))
                .map(s -> s.in(year).buying(type)).orElseGet(() -> fresh(year, type));
        return new BusSteps(bus, List.of(changed));
    }

    /** A step in a year beside those of other years. */
    public BusSteps with(int year, VehicleType type) {
        return and(in(year).map(s -> s.buying(type)).orElseGet(() -> fresh(year, type)));
    }

    /** A new step in a year, paid for by programmes, beside those of other years. */
    public BusSteps with(int year, VehicleType type, List<Programme> programmes) {
        return and(new Step(year, type, null, programmes, null));
    }

    private static Step fresh(int year, VehicleType type) {
        return new Step(year, type, null, List.of(), null);
    }

    private BusSteps and(Step step) {
        List<Step> all = new ArrayList<>(without(step.year()).steps);
        all.add(step);
        return new BusSteps(bus, all);
    }

    /** The same without a step in a year. */
    public BusSteps without(int year) {
        return new BusSteps(bus, steps.stream().filter(s -> s.year() != year).toList());
    }

    /** No steps: the rule decides. */
    public BusSteps none() {
        return new BusSteps(bus, List.of());
    }

    /** The steps of some years moved by a number of years; they take the place of steps that stand there. */
    public BusSteps moved(Set<Integer> years, int by) {
        BusSteps result = new BusSteps(bus, steps.stream().filter(s -> !years.contains(s.year())).toList());
        for (Step step : steps) {
            result = years.contains(step.year()) ? result.and(step.in(step.year() + by)) : result;
        }
        return result;
    }

    /** Makes them the steps that a plan has for the bus. */
    public void write(Plan plan) {
        List<Replacement> kept = steps.stream().map(Step::element).toList();
        plan.getReplacements().removeIf(r -> r.getBus() == bus && !kept.contains(r));
        steps.forEach(s -> s.write(plan, bus));
    }
}
