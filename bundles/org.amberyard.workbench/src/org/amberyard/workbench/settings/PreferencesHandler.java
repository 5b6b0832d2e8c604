package org.amberyard.workbench.settings;

import org.amberyard.workbench.handlers.LanguageChoice;
import org.amberyard.workbench.language.Language;
import org.amberyard.workbench.session.ActiveSession;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.handlers.HandlerUtil;

/** Shows the preferences. */
public final class PreferencesHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        Language before = Language.chosen();
        Shell shell = HandlerUtil.getActiveShellChecked(event);
        new PreferencesDialog(shell, ActiveSession.here().get().isPresent(),
                new StudyPage(HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage())::show).open();
        if (Language.chosen() != before) {
            LanguageChoice.chosen(shell);
        }
        return null;
    }
}
