package org.amberyard.core.plan;

import java.util.EnumSet;
import java.util.Set;
import java.util.stream.IntStream;

/** A stage of the evaluation of a study, in the order in which they follow each other; a change reaches all from the first on. */
public enum StudyStage {
    /** Buses drive their routes. */
    DRIVING("driving"),
    /** The fleet is rolled forward. */
    PLAN("plan"),
    /** The yard is charged. */
    CHARGING("charging"),
    /** All is priced. */
    PRICES("prices");

    private final String label;

    StudyStage(String label) {
        this.label = label;
    }

    /** Name for tables. */
    public String label() {
        return label;
    }

    /** Stages that differ between two studies. Charging counts where a least-cost yard sees other proportions of prices. */
    public static Set<StudyStage> touched(StudyInput edited, StudyInput base) {
        return EnumSet.range(first(edited, base), PRICES);
    }

    private static StudyStage first(StudyInput edited, StudyInput base) {
        if (PriceFields.alone(base, edited) || PriceEdits.alone(edited, base)) {
            boolean seen = base.depot().charging().rule().policy().priced() && !IntStream.range(0, base.years())
                    .allMatch(year -> PlanYards.demandIndex(edited, year) == PlanYards.demandIndex(base, year));
            return seen ? CHARGING : PRICES;
        }
        if (!edited.duty().equals(base.duty())) {
            return DRIVING;
        }
        DepotInput then = edited.depot();
        DepotInput now = base.depot();
        boolean yard = new StudyInput(edited.name(), edited.currency(), edited.baseYear(), edited.years(), edited.money(), edited.duty(),
                edited.types(), edited.buses(), new DepotInput(then.ports(), then.works(), then.service(), then.window(),
                        now.metering(), now.alternatives(), now.charging(), now.bills()),
                edited.prices(), edited.funding(), edited.air(),
                edited.rules(), edited.plans(), edited.baseline(), edited.trips(), base.actuals()).equals(base);
        return yard ? CHARGING : PLAN;
    }
}
