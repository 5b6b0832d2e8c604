package org.amberyard.workbench.handlers;

import org.amberyard.workbench.look.StatusText;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Selects the text of the status bar, so that it can be copied. */
public final class StatusTextHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        StatusText.of(HandlerUtil.getActiveWorkbenchWindowChecked(event).getShell()).ifPresent(StatusText::select);
        return null;
    }
}
