package org.amberyard.study.roll;

import java.util.List;
import java.util.Optional;
import org.amberyard.model.common.Sourced;
import org.amberyard.model.meta.DatedSteps;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.study.Study;

/** Steps of a plan in the years that are over when a study is rolled. */
public final class PastSteps {
    private PastSteps() {
    }

    /** Steps that fall from one year on and before another, buses first. */
    public static List<Sourced> of(Plan plan, int from, int before) {
        return DatedSteps.of(plan).stream().filter(s -> DatedSteps.year(s) >= from && DatedSteps.year(s) < before).toList();
    }

    /** The only plan, or the only one beside the baseline; empty where there are several. */
    public static Optional<Plan> likelyCarriedOut(Study study) {
        List<Plan> others = study.getPlans().stream().filter(p -> study.getPlans().size() == 1 || p != study.getBaseline()).toList();
        return others.size() == 1 ? Optional.of(others.get(0)) : Optional.empty();
    }
}
