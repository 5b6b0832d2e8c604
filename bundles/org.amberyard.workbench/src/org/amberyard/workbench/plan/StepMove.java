package org.amberyard.workbench.plan;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.plans.Plan;
import org.amberyard.study.BusSteps;
import org.amberyard.workbench.grid.CellRange;

/** Steps moved to other years: all in a block, by the same number of years, within the years of the study. */
final class StepMove implements Stroke {

    private final PlanGridModel model;
    private final Map<Bus, Set<Integer>> moved = new HashMap<>();
    private final int from;
    private int by;

    /** @param from column at which the steps are taken hold of */
    StepMove(PlanGridModel model, CellRange block, int from) {
        this.model = model;
        this.from = from;
        for (int row = block.top(); row <= Math.min(block.bottom(), model.rows() - 1); row++) {
            Set<Integer> years = new HashSet<>();
            model.board().steps(model.bus(row)).steps().stream().map(BusSteps.Step::year)
                    .filter(y -> model.column(y) >= block.left() && model.column(y) <= block.right()).forEach(years::add);
            if (!years.isEmpty()) {
                moved.put(model.bus(row), years);
            }
        }
    }

    boolean isEmpty() {
        return moved.isEmpty();
    }

    @Override
    public void to(int row, int column) {
        int first = model.board().firstYear();
        int last = first + model.board().years() - 1;
        int earliest = moved.values().stream().flatMap(Set::stream).mapToInt(Integer::intValue).min().orElse(first);
        int latest = moved.values().stream().flatMap(Set::stream).mapToInt(Integer::intValue).max().orElse(last);
        by = Math.max(first - earliest, Math.min(last - latest, column - from));
    }

    @Override
    public Map<Bus, BusSteps> outcome(Plan plan) {
        Map<Bus, BusSteps> outcome = new HashMap<>();
        moved.forEach((bus, years) -> outcome.put(bus, BusSteps.of(plan, bus).moved(years, by)));
        return outcome;
    }

    /** Years by which the steps move, as far as the pointer has come. */
    int by() {
        return by;
    }
}
