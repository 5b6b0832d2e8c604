package org.amberyard.workbench.handlers;

import org.amberyard.workbench.measurements.FitCurve;
import org.amberyard.workbench.session.ActiveSession;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.handlers.HandlerUtil;

/** Fits the consumption curve of an electric type to its logs. */
public final class FitCurveHandler extends SessionHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        Shell shell = HandlerUtil.getActiveShellChecked(event);
        if (OpenEntry.close(event)) {
            ActiveSession.here().get().ifPresent(session -> FitCurve.ask(shell, session));
        }
        return null;
    }
}
