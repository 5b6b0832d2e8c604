package org.amberyard.workbench.find;

import org.amberyard.workbench.lists.SectionList;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.HandlerUtil;

/** Asks for a part of any name in the window, in its menus or in the study, and goes to what has it or does it. */
public final class FindHandler extends AbstractHandler {
    private static final int FROM_TOP = 4;

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
        Rectangle bounds = window.getShell().getBounds();
        new SectionList(window.getShell(), new Places(window.getActivePage()).sections(), Messages.Find_hint, "",
                size -> new Point(bounds.x + (bounds.width - size.x) / 2, bounds.y + (bounds.height - size.y) / FROM_TOP)).open();
        return null;
    }
}
