package org.amberyard.workbench.plan;

import java.util.List;
import java.util.Optional;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PlansPackage;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.study.PlanCopy;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.DeleteCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Shell;

/** What is done with a plan as a whole; each as one edit that can be undone. */
public final class PlanActions {

    private final StudySession session;

    /** Actions on the plans of a study. */
    public PlanActions(StudySession session) {
        this.session = session;
    }

    private Study study() {
        return session.study();
    }

    /** Asks for a name and adds a copy of a plan under it, behind the plan; answers the copy unless the user gives up. */
    public Optional<Plan> copy(Shell shell, Plan plan) {
        return askName(shell, NLS.bind(Messages.Copy_title, ElementNames.of(plan)), PlanCopy.freeName(study(), plan), null)
                .map(name -> copy(plan, name));
    }

    /** Adds a copy of a plan behind it and looks at it. */
    public Plan copy(Plan plan, String name) {
        Plan copy = PlanCopy.of(plan, name);
        AddCommand add = new AddCommand(session.domain(), study(), StudyPackage.Literals.STUDY__PLANS, copy,
                study().getPlans().indexOf(plan) + 1);
        add.setLabel(NLS.bind(Messages.Copy_done, ElementNames.of(plan)));
        session.execute(add);
        new PlanChoice(session).chooseCopy(copy, plan);
        return copy;
    }

    /** Asks for another name for a plan. */
    public void rename(Shell shell, Plan plan) {
        askName(shell, NLS.bind(Messages.Rename_title, ElementNames.of(plan)), ElementNames.of(plan), plan)
                .filter(name -> !name.equals(plan.getName())).ifPresent(name -> rename(plan, name));
    }

    private void rename(Plan plan, String name) {
        SetCommand set = new SetCommand(session.domain(), plan, PlansPackage.Literals.PLAN__NAME, name);
        set.setLabel(NLS.bind(Messages.Rename_done, ElementNames.of(plan)));
        session.execute(set);
        new PlanChoice(session).choose(plan);
    }

    /** True when a plan can go: the one that others are compared with must stay. */
    public boolean canDelete(Plan plan) {
        return plan != study().getBaseline();
    }

    /** Deletes a plan with its steps. */
    public void delete(Plan plan) {
        if (canDelete(plan)) {
            DeleteCommand delete = new DeleteCommand(session.domain(), List.of(plan));
            delete.setLabel(NLS.bind(Messages.Delete_done, ElementNames.of(plan)));
            session.execute(delete);
        }
    }

    private Optional<String> askName(Shell shell, String title, String offered, Plan own) {
        InputDialog dialog = new InputDialog(shell, title, Messages.Name_ask, offered, typed -> refusal(typed, own));
        return dialog.open() == Window.OK ? Optional.of(dialog.getValue().strip()) : Optional.empty();
    }

    private String refusal(String typed, Plan own) {
        if (typed.isBlank()) {
            return Messages.Name_blank;
        }
        return PlanCopy.isTaken(study(), own, typed) ? NLS.bind(Messages.Name_taken, typed.strip()) : null;
    }
}
