package org.amberyard.workbench.layout;

import java.util.Map;
import java.util.Optional;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.IPerspectiveDescriptor;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.WorkbenchException;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.handlers.HandlerUtil;
import org.eclipse.ui.menus.UIElement;

/** Lays the window out for a purpose; each layout is kept as the user leaves it. */
public final class LayOutHandler extends AbstractHandler implements IElementUpdater {
    /** Id of the command. */
    static final String COMMAND = "org.amberyard.workbench.layOut";

    private static final String PURPOSE = "org.amberyard.workbench.layOut.purpose";

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
        try {
            window.getWorkbench().showPerspective(Purpose.valueOf(event.getParameter(PURPOSE)).id(), window);
        } catch (WorkbenchException e) {
            throw new ExecutionException(e.getMessage(), e);
        }
        return null;
    }

    @Override
    public void updateElement(UIElement element, Map parameters) {
        element.setChecked(shown().filter(p -> p.name().equals(parameters.get(PURPOSE))).isPresent());
    }

    private static Optional<Purpose> shown() {
        return Optional.ofNullable(PlatformUI.getWorkbench().getActiveWorkbenchWindow()).map(IWorkbenchWindow::getActivePage)
                .map(IWorkbenchPage::getPerspective).map(IPerspectiveDescriptor::getId).flatMap(Purpose::ofId);
    }
}
