package org.amberyard.workbench.plan;

import java.util.SortedSet;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.validation.BodyFit;
import org.amberyard.model.vehicles.VehicleType;
import org.amberyard.study.BusSteps;

/**
 * What a stroke of the mouse over the cells of a bus does.
 *
 * @param kind kind of brush
 * @param type type bought; null for brushes that buy none
 */
record Brush(Kind kind, VehicleType type) {

    /** Kinds of brush. */
    enum Kind {
        /** Paints nothing: strokes select cells and move steps. */
        SELECT,
        /** Buys a bus of the type. */
        BUY,
        /** Retires the bus without another. */
        RETIRE,
        /** Takes the steps away, so that the rule decides. */
        RULE
    }

    /** Strokes select and move. */
    static final Brush SELECT = new Brush(Kind.SELECT, null);
    /** Retires buses. */
    static final Brush RETIRE = new Brush(Kind.RETIRE, null);
    /** Leaves buses to the rule. */
    static final Brush RULE = new Brush(Kind.RULE, null);

    /** Buys buses of a type. */
    static Brush buy(VehicleType type) {
        return new Brush(Kind.BUY, type);
    }

    /** True when a place can be painted. */
    boolean suits(Bus bus) {
        return kind != Kind.BUY || BodyFit.suits(type, bus);
    }

    /**
     * Steps of a bus after its cells have been painted: from the first painted year on stands there what the brush says.
     *
     * @param years painted years; at least one
     * @param keepOthers true to keep steps of years that were not painted
     */
    BusSteps painted(BusSteps before, SortedSet<Integer> years, boolean keepOthers) {
        if (kind != Kind.RULE) {
            return keepOthers ? before.with(years.first(), type) : before.only(years.first(), type);
        }
        BusSteps after = keepOthers ? before : before.none();
        for (int year : years) {
            after = after.without(year);
        }
        return after;
    }
}
