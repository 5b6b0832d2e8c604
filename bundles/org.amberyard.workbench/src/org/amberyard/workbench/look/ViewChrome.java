package org.amberyard.workbench.look;

import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.ui.IWorkbenchPartSite;

/** Trims what the workbench puts around a view. */
public final class ViewChrome {

    private ViewChrome() {
    }

    /** Takes away the toolbar of a view that has none; the workbench would keep a sliver of it beside the tabs. */
    public static void withoutToolbar(IWorkbenchPartSite site) {
        MPart part = site.getService(MPart.class);
        if (part != null && part.getToolbar() != null) {
            part.getToolbar().setToBeRendered(false);
        }
    }
}
