package org.amberyard.batch;

import java.util.stream.Collectors;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyResult;

/** Finds the plan that the command line names. */
final class PlanOperand {
    private PlanOperand() {
    }

    static PlanResult of(StudyResult result, String name) throws WrongUse {
        return result.plans().stream().filter(p -> p.name().equals(name)).findFirst()
                .orElseThrow(() -> new WrongUse("PLAN is “" + name + "”; it must be one of "
                        + result.plans().stream().map(PlanResult::name).collect(Collectors.joining(", ")) + "."));
    }
}
