package org.amberyard.workbench.handlers;

import org.amberyard.workbench.compare.CompareView;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Sets the figures of all plans side by side. */
public final class ComparePlansHandler extends SessionHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        CompareView.open(HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage());
        return null;
    }
}
