package org.amberyard.study;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.amberyard.core.plan.FleetEvent;
import org.amberyard.core.plan.FleetYear;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;

/** The finding on buses that a plan has to order before the base date of the study, from which it looks ahead. */
final class OrderFindings {
    private final Study study;
    private final StudyInput input;
    private final PlanResult result;
    private final int plan;

    OrderFindings(Study study, StudyResult result, int plan) {
        this.study = study;
        this.input = result.input();
        this.result = result.plans().get(plan);
        this.plan = plan;
    }

    List<Finding> list() {
        LocalDate base = input.money().fiscal().start(input.baseYear());
        List<FleetEvent.Bought> late = result.fleet().events().stream().filter(FleetEvent.Bought.class::isInstance)
                .map(FleetEvent.Bought.class::cast).filter(b -> b.vehicle().used().isEmpty() && FleetYear.orderBy(input, b).isBefore(base))
                .sorted(Comparator.comparing(b -> FleetYear.orderBy(input, b))).toList();
        return late.isEmpty() ? List.of() : List.of(new Finding(Severity.WARNING, study.getPlans().get(plan), null, "Plan “" + result.name()
                + "”: " + late.size() + (late.size() == 1 ? " bus" : " buses") + " must be ordered before the base date " + base + ", the first by "
                + FleetYear.orderBy(input, late.get(0)) + ": " + FirstNames.of(late.stream().map(b -> b.vehicle().unit()).toList())
                + ". Where they are not on order yet, move the purchase."));
    }
}
