package org.amberyard.workbench.handlers;

import java.util.Map;
import org.amberyard.workbench.language.Language;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.handlers.HandlerUtil;
import org.eclipse.ui.menus.UIElement;

/** Chooses the language of the window and offers to start it again; whoever has unsaved changes is asked before. */
public final class LanguageHandler extends AbstractHandler implements IElementUpdater {

    private static final String CHOICE = "org.amberyard.workbench.language.choice";

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        if (!OpenEntry.close(event)) {
            return null;
        }
        Language.choose(Language.valueOf(event.getParameter(CHOICE)));
        LanguageChoice.chosen(HandlerUtil.getActiveShellChecked(event));
        return null;
    }

    @Override
    public void updateElement(UIElement element, Map parameters) {
        element.setChecked(Language.chosen().name().equals(parameters.get(CHOICE)));
    }
}
