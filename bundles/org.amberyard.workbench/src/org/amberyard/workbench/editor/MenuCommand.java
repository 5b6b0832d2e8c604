package org.amberyard.workbench.editor;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;

/** Commands of the menu that pages offer too. */
final class MenuCommand {
    static final String IMPORT_TRACE = "org.amberyard.workbench.importTrace";
    static final String FIT_CURVE = "org.amberyard.workbench.fitCurve";
    static final String IMPORT_METER = "org.amberyard.workbench.importMeter";
    static final String IMPORT_WEATHER = "org.amberyard.workbench.importWeather";
    static final String IMPORT_SCHEDULE = "org.amberyard.workbench.importSchedule";

    private MenuCommand() {
    }

    static void run(String id) {
        try {
            PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(id, null);
        } catch (CommandException e) {
            ILog.of(MenuCommand.class).error(e.getMessage(), e);
        }
    }
}
