package org.amberyard.workbench.handlers;

import org.amberyard.workbench.language.Language;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;

/** What follows when a language has been chosen, wherever it was. */
public final class LanguageChoice {
    private static final String COMMAND = "org.amberyard.workbench.language";

    private LanguageChoice() {
    }

    /** Marks it in the menu, and offers to start the window again where it speaks another one. */
    public static void chosen(Shell shell) {
        PlatformUI.getWorkbench().getService(ICommandService.class).refreshElements(COMMAND, null);
        if (!Language.chosen().isShown() && restartWanted(shell)) {
            PlatformUI.getWorkbench().restart();
        }
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
}
