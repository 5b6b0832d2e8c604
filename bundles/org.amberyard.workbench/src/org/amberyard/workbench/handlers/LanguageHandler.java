package org.amberyard.workbench.handlers;

import java.util.Map;
import org.amberyard.workbench.language.Language;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.handlers.HandlerUtil;
import org.eclipse.ui.menus.UIElement;

/** Chooses the language of the window and offers to start it again; whoever has unsaved changes is asked before. */
public final class LanguageHandler extends AbstractHandler implements IElementUpdater {

    private static final String COMMAND = "org.amberyard.workbench.language";
    private static final String CHOICE = "org.amberyard.workbench.language.choice";

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        if (!OpenEntry.close(event)) {
            return null;
        }
        Language.choose(Language.valueOf(event.getParameter(CHOICE)));
        PlatformUI.getWorkbench().getService(ICommandService.class).refreshElements(COMMAND, null);
        if (!Language.chosen().isShown() && restartWanted(HandlerUtil.getActiveShellChecked(event))) {
            PlatformUI.getWorkbench().restart();
        }
        return null;
    }

    private static boolean restartWanted(Shell shell) {
        if (!Language.canRestart()) {
            MessageDialog.openInformation(shell, Messages.Language_title, Messages.Language_next);
            return false;
        }
        return MessageDialog.open(MessageDialog.QUESTION, shell, Messages.Language_title,
                Messages.Language_next + " " + Messages.Language_ask, 0,
                Messages.Language_now, Messages.Language_later) == 0;
    }

    @Override
    public void updateElement(UIElement element, Map parameters) {
        element.setChecked(Language.chosen().name().equals(parameters.get(CHOICE)));
    }
}
