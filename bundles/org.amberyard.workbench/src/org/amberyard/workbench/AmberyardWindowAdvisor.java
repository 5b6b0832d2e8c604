package org.amberyard.workbench;

import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** Sets up a window before it opens. */
final class AmberyardWindowAdvisor extends WorkbenchWindowAdvisor {

    private static final Point FIRST_SIZE = new Point(1280, 800);

    AmberyardWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
        super(configurer);
    }

    @Override
    public void preWindowOpen() {
        IWorkbenchWindowConfigurer window = getWindowConfigurer();
        window.setInitialSize(FIRST_SIZE);
        window.setTitle("Amberyard");
        window.setShowStatusLine(true);
        window.setShowProgressIndicator(true);
    }
}
