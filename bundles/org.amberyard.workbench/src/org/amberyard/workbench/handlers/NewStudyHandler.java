package org.amberyard.workbench.handlers;

import org.amberyard.workbench.begin.NewStudyDialog;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.HandlerUtil;

/** Asks what a new study begins with and opens it. */
public final class NewStudyHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
        NewStudyDialog dialog = new NewStudyDialog(window.getShell());
        dialog.open();
        dialog.study().ifPresent(new StudyOpener(window.getActivePage())::openNew);
        return null;
    }
}
