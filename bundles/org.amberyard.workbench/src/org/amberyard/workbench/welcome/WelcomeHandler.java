package org.amberyard.workbench.welcome;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Shows the page of welcome. */
public final class WelcomeHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        Welcome.open(HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage());
        return null;
    }
}
