package org.amberyard.workbench.layout;

import org.eclipse.ui.IPerspectiveDescriptor;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PerspectiveAdapter;
import org.eclipse.ui.commands.ICommandService;

/** Keeps the choices of purposes in menu and status line at what the window is laid out for. */
public final class ShownPurpose extends PerspectiveAdapter {
    private final IWorkbenchWindow window;

    private ShownPurpose(IWorkbenchWindow window) {
        this.window = window;
    }

    /** Follows a window until it is closed. */
    public static void follow(IWorkbenchWindow window) {
        ShownPurpose shown = new ShownPurpose(window);
        window.addPerspectiveListener(shown);
        shown.refresh();
    }

    @Override
    public void perspectiveActivated(IWorkbenchPage page, IPerspectiveDescriptor perspective) {
        refresh();
    }

    private void refresh() {
        window.getService(ICommandService.class).refreshElements(LayOutHandler.COMMAND, null);
    }
}
