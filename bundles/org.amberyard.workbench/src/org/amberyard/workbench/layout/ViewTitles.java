package org.amberyard.workbench.layout;

import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.e4.ui.model.application.ui.basic.MWindow;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.views.IViewDescriptor;
import org.eclipse.ui.views.IViewRegistry;

/** Titles of views in the language of this run; the layout that is kept has those of the run before. */
public final class ViewTitles {
    private ViewTitles() {
    }

    /** Gives the views of a window their titles, also those that are hidden behind others. */
    public static void renew(IWorkbenchWindow window) {
        IViewRegistry views = window.getWorkbench().getViewRegistry();
        window.getService(MWindow.class).getSharedElements().stream().filter(MPart.class::isInstance).map(MPart.class::cast).forEach(part -> {
            IViewDescriptor view = views.find(part.getElementId());
            if (view != null) {
                part.setLabel(view.getLabel());
            }
        });
    }
}
