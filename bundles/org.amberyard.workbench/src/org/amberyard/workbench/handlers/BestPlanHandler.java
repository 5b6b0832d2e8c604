package org.amberyard.workbench.handlers;

import org.amberyard.model.plans.Plan;
import org.amberyard.workbench.plan.BestPlanAsk;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.swt.widgets.Shell;

/** Looks for the cheapest steps of the plan that is looked at. */
public final class BestPlanHandler extends PlanHandler {

    @Override
    void ask(Shell shell, StudySession session, Plan plan) {
        BestPlanAsk.ask(shell, session, plan);
    }
}
