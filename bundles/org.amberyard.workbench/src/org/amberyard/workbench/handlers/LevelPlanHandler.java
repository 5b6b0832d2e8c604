package org.amberyard.workbench.handlers;

import org.amberyard.model.plans.Plan;
import org.amberyard.workbench.plan.LevelPlan;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.swt.widgets.Shell;

/** Keeps the plan that is looked at within its yearly cap. */
public final class LevelPlanHandler extends PlanHandler {

    @Override
    void ask(Shell shell, StudySession session, Plan plan) {
        LevelPlan.ask(shell, session, plan);
    }
}
