package org.amberyard.workbench.handlers;

import org.amberyard.workbench.roll.RollDialog;
import org.amberyard.workbench.session.ActiveSession;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.HandlerUtil;

/** Makes a new study that goes on from a later base year; the study on show stays as it is. */
public final class RollYearHandler extends SessionHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
        if (OpenEntry.close(event)) {
            ActiveSession.here().get().ifPresent(session -> roll(window, session));
        }
        return null;
    }

    private static void roll(IWorkbenchWindow window, StudySession session) {
        if (session.evaluation().current().isEmpty()) {
            MessageDialog.openInformation(window.getShell(), Messages.Roll_title, Messages.Roll_noResults);
        } else if (session.study().getSettings().getHorizonYears() < 2) {
            MessageDialog.openInformation(window.getShell(), Messages.Roll_title, Messages.Roll_oneYear);
        } else {
            RollDialog dialog = new RollDialog(window.getShell(), session.study());
            dialog.open();
            dialog.made().ifPresent(new StudyOpener(window.getActivePage())::openNew);
        }
    }
}
