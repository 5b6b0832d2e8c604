package org.amberyard.workbench.plan;

import java.util.Optional;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PlansPackage;
import org.amberyard.study.PlanLevel;
import org.amberyard.workbench.language.Words;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Shell;

/** Keeps a plan within its yearly cap. */
public final class LevelPlan {
    private LevelPlan() {
    }

    /** Shows what would move in a plan, and moves it if the user agrees; what years cost is known from results only. */
    public static void ask(Shell shell, StudySession session, Plan plan) {
        Optional<StudyResult> result = session.evaluation().current();
        if (!PlanLevel.hasCap(plan)) {
            MessageDialog.openInformation(shell, Messages.Level_title, NLS.bind(Messages.Level_noCap,
                    ElementNames.of(plan), Words.field(PlansPackage.Literals.PLAN__YEARLY_CAP).label()));
        } else if (result.isEmpty()) {
            MessageDialog.openInformation(shell, Messages.Level_title, Messages.Level_noResults);
        } else {
            new LevelDialog(shell, session, plan, result.get()).open();
        }
    }
}
