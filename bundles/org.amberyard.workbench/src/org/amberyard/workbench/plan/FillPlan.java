package org.amberyard.workbench.plan;

import java.util.Optional;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.plans.Plan;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Shell;

/** Fills a plan by a rule that the user chooses. */
public final class FillPlan {
    private FillPlan() {
    }

    /** Asks for a rule for a plan; which types do which routes is known from results only. */
    public static void ask(Shell shell, StudySession session, Plan plan) {
        Optional<StudyResult> result = session.evaluation().current();
        if (result.isEmpty()) {
            MessageDialog.openInformation(shell, Messages.Fill_title, Messages.Fill_noResults);
            return;
        }
        new FillDialog(shell, session, plan, result.get()).open();
    }
}
