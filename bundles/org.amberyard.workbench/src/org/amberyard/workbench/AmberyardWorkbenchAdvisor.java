package org.amberyard.workbench;

import org.amberyard.workbench.layout.Purpose;
import org.amberyard.workbench.look.MenuKeys;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** Settles what holds for the whole workbench: the perspective it starts with and what it remembers. */
public class AmberyardWorkbenchAdvisor extends WorkbenchAdvisor {

    @Override
    public void initialize(IWorkbenchConfigurer configurer) {
        super.initialize(configurer);
        configurer.setSaveAndRestore(true);
        MenuKeys.follow(configurer.getWorkbench().getDisplay());
    }

    @Override
    public String getInitialWindowPerspectiveId() {
        return Purpose.MONEY.id();
    }

    @Override
    public WorkbenchWindowAdvisor createWorkbenchWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
        return new AmberyardWindowAdvisor(configurer);
    }
}
