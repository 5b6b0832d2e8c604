package org.amberyard.workbench;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.ui.handlers.IHandlerService;

/** Carries out commands of the window as their menus do. */
final class Commands {
    private static final String OURS = "org.amberyard.workbench.";

    private Commands() {
    }

    /** Carries out one of our own, named without its bundle; on the event thread. */
    static void run(String command) {
        runAny(OURS + command);
    }

    /** Carries out any by its whole id; on the event thread. */
    static void runAny(String command) {
        try {
            OpenStudy.page().getWorkbenchWindow().getService(IHandlerService.class).executeCommand(command, null);
        } catch (CommandException e) {
            throw new AssertionError(e);
        }
    }
}
