package org.amberyard.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.amberyard.core.plan.BudgetYear;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PlansPackage;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;

/** Findings on years in which a plan asks for more than its yearly cap. */
final class BudgetFindings {
    private final StudyResult result;
    private final PlanResult plan;
    private final Plan model;

    BudgetFindings(Study study, StudyResult result, int plan) {
        this.result = result;
        this.plan = result.plans().get(plan);
        this.model = study.getPlans().get(plan);
    }

    List<Finding> list() {
        List<Finding> findings = new ArrayList<>();
        for (BudgetYear year : plan.finance().budget()) {
            double above = year.aboveCap().orElse(0);
            if (above > 0) {
                findings.add(new Finding(Severity.WARNING, model, PlansPackage.Literals.PLAN__YEARLY_CAP, text(year, above)));
            }
        }
        return findings;
    }

    private String text(BudgetYear year, double above) {
        String name = result.input().money().fiscal().name(result.input().baseYear() + year.year());
        return "Plan “" + plan.name() + "”: " + name + " asks for " + money(year.appropriation()) + ", which is " + money(above)
                + " above its cap of " + money(year.cap().orElseThrow())
                + " a year. Move purchases to another year, or finance them.";
    }

    private String money(double amount) {
        return String.format(Locale.ROOT, "%,.0f %s", amount, result.input().currency());
    }
}
