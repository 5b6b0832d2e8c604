package org.amberyard.workbench.handlers;

import java.util.Optional;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.workbench.session.ActiveSession;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.handlers.HandlerUtil;

/** A command that takes results out of the program; it needs results that are up to date. */
abstract class ResultHandler extends SessionHandler {

    @Override
    public final Object execute(ExecutionEvent event) throws ExecutionException {
        Shell shell = HandlerUtil.getActiveShellChecked(event);
        if (OpenEntry.close(event)) {
            StudySession session = ActiveSession.here().get().orElseThrow(() -> new ExecutionException(Messages.Export_nothing));
            Optional<StudyResult> current = session.evaluation().current();
            current.ifPresentOrElse(r -> take(shell, session, r),
                    () -> MessageDialog.openInformation(shell, Messages.Export_title, Messages.Export_nothing));
        }
        return null;
    }

    /** Takes the results out. */
    abstract void take(Shell shell, StudySession session, StudyResult result);
}
