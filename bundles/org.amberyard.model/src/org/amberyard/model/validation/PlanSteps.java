package org.amberyard.model.validation;

import java.util.Comparator;
import java.util.stream.Stream;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.Replacement;
import org.amberyard.model.vehicles.VehicleType;

/** The steps of a plan, and what they make of the fleet. */
final class PlanSteps {
    private final Plan plan;

    PlanSteps(Plan plan) {
        this.plan = plan;
    }

    /** The type in a bus's place before the steps of a year, as far as the plan itself says; null when unknown. */
    VehicleType typeBefore(Bus bus, int year) {
        return replacements(bus).filter(r -> r.getYear() < year && r.getNewType() != null)
                .max(Comparator.comparingInt(Replacement::getYear))
                .map(Replacement::getNewType).orElse(bus.getType());
    }

    private Stream<Replacement> replacements(Bus bus) {
        return plan.getReplacements().stream().filter(r -> r.getBus() == bus);
    }
}
