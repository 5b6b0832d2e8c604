package org.amberyard.workbench.settings;

import org.amberyard.workbench.session.ActiveSession;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Shows the preferences. */
public final class PreferencesHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        new PreferencesDialog(HandlerUtil.getActiveShellChecked(event), ActiveSession.here().get().isPresent(),
                new StudyPage(HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage())::show).open();
        return null;
    }
}
