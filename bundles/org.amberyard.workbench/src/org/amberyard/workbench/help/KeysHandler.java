package org.amberyard.workbench.help;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Shows what keys do. */
public final class KeysHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        new KeysDialog(HandlerUtil.getActiveWorkbenchWindowChecked(event)).open();
        return null;
    }
}
