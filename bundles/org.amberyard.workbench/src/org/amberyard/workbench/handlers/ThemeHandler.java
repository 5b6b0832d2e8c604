package org.amberyard.workbench.handlers;

import java.util.Map;
import org.amberyard.workbench.look.Theme;
import org.amberyard.workbench.preferences.Preferences;
import org.amberyard.workbench.session.ActiveSession;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.menus.UIElement;

/** Makes the window dark, or light again, at once. */
public final class ThemeHandler extends AbstractHandler implements IElementUpdater {

    private static final String COMMAND = "org.amberyard.workbench.darkTheme";

    @Override
    public Object execute(ExecutionEvent event) {
        Preferences.THEME.set(Theme.shown() == Theme.DARK ? "light" : "dark");
        Theme.use(PlatformUI.getWorkbench().getDisplay());
        ActiveSession.here().tellAgain();
        PlatformUI.getWorkbench().getService(ICommandService.class).refreshElements(COMMAND, null);
        return null;
    }

    @Override
    public void updateElement(UIElement element, Map parameters) {
        element.setChecked(Theme.shown() == Theme.DARK);
    }
}
