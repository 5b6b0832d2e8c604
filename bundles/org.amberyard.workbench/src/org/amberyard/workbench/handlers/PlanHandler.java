package org.amberyard.workbench.handlers;

import java.util.Optional;
import org.amberyard.model.plans.Plan;
import org.amberyard.workbench.plan.PlanChoice;
import org.amberyard.workbench.session.ActiveSession;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.handlers.HandlerUtil;

/** A command for the plan that is looked at, wherever the user is. */
abstract class PlanHandler extends SessionHandler {

    @Override
    public final Object execute(ExecutionEvent event) throws ExecutionException {
        Shell shell = HandlerUtil.getActiveShellChecked(event);
        if (OpenEntry.close(event)) {
            Optional<StudySession> session = ActiveSession.here().get();
            session.flatMap(s -> new PlanChoice(s).plan()).ifPresent(plan -> ask(shell, session.orElseThrow(), plan));
        }
        return null;
    }

    abstract void ask(Shell shell, StudySession session, Plan plan);
}
