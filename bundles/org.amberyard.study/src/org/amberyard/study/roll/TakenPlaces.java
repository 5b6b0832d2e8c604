package org.amberyard.study.roll;

import org.amberyard.model.fleet.Bus;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.Replacement;

/**
 * Places that other steps of a plan fill in a year already; a place is filled once a year.
 *
 * @param plan the plan
 * @param year the year
 */
record TakenPlaces(Plan plan, int year) {

    /** True where another step of the year replaces the bus of a step. */
    boolean replaced(Replacement step) {
        return step.getBus() != null && others(step, step.getBus(), false);
    }

    /** True where the old bus of another step of the year moves to the place of a step. */
    boolean movedInto(Replacement step) {
        return step.getBus() != null && others(step, step.getBus(), true);
    }

    /** True where another step of the year fills the place to which the old bus of a step moves. */
    boolean target(Replacement step) {
        Bus to = step.getCascadeTo();
        return to != null && (others(step, to, false) || others(step, to, true));
    }

    private boolean others(Replacement step, Bus place, boolean moving) {
        return plan.getReplacements().stream().anyMatch(other -> other != step && other.getYear() == year
                && (moving ? other.getCascadeTo() : other.getBus()) == place);
    }
}
