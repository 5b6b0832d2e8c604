package org.amberyard.workbench.handlers;

import org.amberyard.model.plans.Plan;
import org.amberyard.workbench.plan.FillPlan;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.swt.widgets.Shell;

/** Fills the plan that is looked at by a rule. */
public final class FillPlanHandler extends PlanHandler {

    @Override
    void ask(Shell shell, StudySession session, Plan plan) {
        FillPlan.ask(shell, session, plan);
    }
}
