package org.amberyard.study.roll;

import java.util.Set;
import org.amberyard.model.common.Sourced;
import org.amberyard.model.plans.Plan;

/**
 * How a study is rolled.
 *
 * @param toYear the new base year
 * @param carriedOut plan that was carried out in the years that are over
 * @param sameEnd true where the study ends in the same year as before; else it keeps its number of years
 * @param late steps of that plan in those years that were not carried out and fall in the new base year
 */
public record RollChoice(int toYear, Plan carriedOut, boolean sameEnd, Set<? extends Sourced> late) {

    public RollChoice {
        late = Set.copyOf(late);
    }
}
