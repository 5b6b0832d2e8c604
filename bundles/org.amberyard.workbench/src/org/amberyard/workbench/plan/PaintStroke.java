package org.amberyard.workbench.plan;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.plans.Plan;
import org.amberyard.study.BusSteps;

/** A brush drawn over cells. */
final class PaintStroke implements Stroke {

    private final PlanGridModel model;
    private final Brush brush;
    private final boolean keepOthers;
    private final Map<Integer, SortedSet<Integer>> touched = new TreeMap<>();
    private int lastRow;
    private int lastColumn;

    /** @param keepOthers true to keep steps of years that are not painted */
    PaintStroke(PlanGridModel model, Brush brush, boolean keepOthers, int row, int column) {
        this.model = model;
        this.brush = brush;
        this.keepOthers = keepOthers;
        this.lastRow = row;
        this.lastColumn = column;
        touch(row, column);
    }

    /** A fast pointer skips rows; those between are painted along the line. */
    @Override
    public void to(int row, int column) {
        int within = Math.max(model.column(model.board().firstYear()), column);
        int rows = Math.abs(row - lastRow);
        for (int i = 1; i <= rows; i++) {
            touch(lastRow + (row - lastRow) * i / rows, Math.round(lastColumn + (within - lastColumn) * (float) i / rows));
        }
        touch(row, within);
        lastRow = row;
        lastColumn = within;
    }

    private void touch(int row, int column) {
        touched.computeIfAbsent(row, r -> new TreeSet<>()).add(model.year(column));
    }

    @Override
    public Map<Bus, BusSteps> outcome(Plan plan) {
        Map<Bus, BusSteps> outcome = new HashMap<>();
        touched.forEach((row, years) -> {
            Bus bus = model.bus(row);
            if (brush.suits(bus)) {
                outcome.put(bus, brush.painted(BusSteps.of(plan, bus), years, keepOthers));
            }
        });
        return outcome;
    }

    @Override
    public Optional<String> objection() {
        return touched.keySet().stream().map(model::bus).filter(b -> !brush.suits(b)).findFirst()
                .map(b -> StepText.misfit(brush.type(), b));
    }
}
