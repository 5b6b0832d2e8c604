package org.amberyard.core.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;

/** The steps of a plan: they are taken at the start of their year, and a place that they name is left to them. */
final class PlanSteps {
    private final StudyInput study;
    private final PlanInput plan;
    private final FleetPlaces fleet;
    private final Map<Integer, Integer> lastYear = new HashMap<>();

    PlanSteps(StudyInput study, PlanInput plan, FleetPlaces fleet) {
        this.study = study;
        this.plan = plan;
        this.fleet = fleet;
        plan.replacements().forEach(r -> lastYear.merge(r.place(), r.year(), Math::max));
    }

    /** True when a step for a place falls in a year or later. */
    boolean awaited(int place, int year) {
        return lastYear.getOrDefault(place, -1) >= year;
    }

    /** True when a step names a place in any year. */
    boolean names(int place) {
        return lastYear.containsKey(place);
    }

    /** True when a step in a year takes a bus from a place or brings one there. */
    boolean touch(int place, int year) {
        return plan.replacements().stream().anyMatch(s -> s.year() == year
                && (s.place() == place || s.cascadeTo().equals(OptionalInt.of(place))));
    }

    /** First all outgoing buses leave, then some move, then new ones come: the order of the steps does not matter. */
    void take(int year) {
        List<PlanInput.Replacement> steps = plan.replacements().stream().filter(s -> s.year() == year).toList();
        Map<Integer, Vehicle> outgoing = new TreeMap<>();
        for (PlanInput.Replacement step : steps) {
            fleet.in(step.place()).ifPresent(bus -> outgoing.put(step.place(), bus));
            fleet.empty(step.place());
        }
        steps.stream().filter(s -> outgoing.containsKey(s.place())).forEach(s -> release(s, outgoing.get(s.place())));
        steps.forEach(s -> s.newType().ifPresent(type -> fill(s, type, outgoing.get(s.place()))));
    }

    private void fill(PlanInput.Replacement step, int type, Vehicle outgoing) {
        fleet.sell(step.year(), step.place());
        int outgoingType = outgoing == null ? study.buses().get(step.place()).type() : outgoing.type();
        fleet.buy(step.year(), step.place(), type, outgoingType, Optional.of(step));
    }

    private void release(PlanInput.Replacement step, Vehicle outgoing) {
        if (step.cascadeTo().isEmpty()) {
            fleet.happened(new FleetEvent.Sold(step.year(), step.place(), outgoing, false));
        } else {
            fleet.move(step.year(), outgoing, step.place(), step.cascadeTo().getAsInt());
        }
    }
}
