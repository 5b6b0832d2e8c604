package org.amberyard.workbench.handlers;

import java.util.Optional;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.workbench.session.ActiveSession;
import org.amberyard.workbench.session.StudySession;
import org.amberyard.workbench.shop.TaskSheetDialog;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.handlers.HandlerUtil;

/** Shows the tasks of a bus in a year, to save or to print. */
public final class TaskSheetHandler extends SessionHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        Shell shell = HandlerUtil.getActiveShellChecked(event);
        if (!OpenEntry.close(event)) {
            return null;
        }
        StudySession session = ActiveSession.here().get().orElseThrow(() -> new ExecutionException(Messages.Export_nothing));
        Optional<StudyResult> result = session.evaluation().current().filter(r -> !r.input().buses().isEmpty());
        if (result.isEmpty()) {
            MessageDialog.openInformation(shell, Messages.Sheet_title, Messages.Sheet_nothing);
            return null;
        }
        new TaskSheetDialog(shell, result.get(), session.choices()).open();
        return null;
    }
}
