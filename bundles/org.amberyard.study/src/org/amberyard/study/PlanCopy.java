package org.amberyard.study;

import org.amberyard.model.plans.Plan;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Copies of plans, and names for them. */
public final class PlanCopy {
    private PlanCopy() {
    }

    /** A copy of a plan with all its steps under another name; not yet part of a study. */
    public static Plan of(Plan plan, String name) {
        Plan copy = EcoreUtil.copy(plan);
        copy.setName(name.strip());
        return copy;
    }

    /** A name for a copy that no plan of the study has. */
    public static String freeName(Study study, Plan plan) {
        String name = plan.getName() + " copy";
        for (int number = 2; isTaken(study, null, name); number++) {
            name = plan.getName() + " copy " + number;
        }
        return name;
    }

    /** True when a plan other than one has a name; null for a new plan. */
    public static boolean isTaken(Study study, Plan own, String name) {
        return study.getPlans().stream().filter(p -> p != own && p.getName() != null)
                .anyMatch(p -> p.getName().strip().equals(name.strip()));
    }
}
