package org.amberyard.workbench.handlers;

import java.util.Map;
import org.amberyard.workbench.look.Theme;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.handlers.HandlerUtil;
import org.eclipse.ui.menus.UIElement;

/** Chooses a dark or a light window for the next start. */
public final class ThemeHandler extends AbstractHandler implements IElementUpdater {

    private static final String COMMAND = "org.amberyard.workbench.darkTheme";

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        Theme.choose(Theme.chosen() == Theme.DARK ? Theme.LIGHT : Theme.DARK);
        PlatformUI.getWorkbench().getService(ICommandService.class).refreshElements(COMMAND, null);
        if (Theme.chosen() != Theme.shown()) {
            MessageDialog.openInformation(HandlerUtil.getActiveShellChecked(event), Messages.Theme_title,
                    Theme.chosen() == Theme.DARK ? Messages.Theme_dark : Messages.Theme_light);
        }
        return null;
    }

    @Override
    public void updateElement(UIElement element, Map parameters) {
        element.setChecked(Theme.chosen() == Theme.DARK);
    }
}
