package org.amberyard.workbench.plan;

import java.util.Optional;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.plans.Plan;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Shell;

/** Looks for the cheapest steps of a plan. */
public final class BestPlanAsk {
    private BestPlanAsk() {
    }

    /** Asks what may be decided and must be reached, and writes what is found if the user agrees. */
    public static void ask(Shell shell, StudySession session, Plan plan) {
        Optional<StudyResult> result = session.evaluation().current();
        if (result.isEmpty()) {
            MessageDialog.openInformation(shell, Messages.Best_title, Messages.Level_noResults);
        } else if (session.study().getDepot().getPortTypes().isEmpty()) {
            MessageDialog.openInformation(shell, Messages.Best_title, Messages.Best_noPorts);
        } else {
            new BestDialog(shell, session, plan, result.get()).open();
        }
    }
}
