package org.amberyard.workbench.handlers;

import org.amberyard.workbench.plan.FillPlan;
import org.amberyard.workbench.session.ActiveSession;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.handlers.HandlerUtil;

/** Fills the plan that is looked at by a rule. */
public final class FillPlanHandler extends SessionHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        Shell shell = HandlerUtil.getActiveShellChecked(event);
        if (OpenEntry.close(event)) {
            ActiveSession.here().get().ifPresent(session -> FillPlan.ask(shell, session));
        }
        return null;
    }
}
