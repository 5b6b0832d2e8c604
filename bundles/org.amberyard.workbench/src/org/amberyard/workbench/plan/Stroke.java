package org.amberyard.workbench.plan;

import java.util.Map;
import java.util.Optional;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.plans.Plan;
import org.amberyard.study.BusSteps;

/** A stroke of the mouse over the plan grid. */
interface Stroke {

    /** The pointer has come to a cell. */
    void to(int row, int column);

    /** Steps of the buses that it would change so far. */
    Map<Bus, BusSteps> outcome(Plan plan);

    /** Why some of the cells touched stay as they are; empty when none do. */
    default Optional<String> objection() {
        return Optional.empty();
    }
}
