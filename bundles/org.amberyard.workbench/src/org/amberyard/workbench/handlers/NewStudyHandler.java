package org.amberyard.workbench.handlers;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Opens a new study. */
public final class NewStudyHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        new StudyOpener(HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage()).openNew();
        return null;
    }
}
