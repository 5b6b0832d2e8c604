package org.amberyard.workbench;

import org.eclipse.jface.action.GroupMarker;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.ui.IWorkbenchActionConstants;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;

/** The menus, in their order; what is in them is contributed by the extensions of the bundle. */
final class AmberyardActionBars extends ActionBarAdvisor {

    AmberyardActionBars(IActionBarConfigurer configurer) {
        super(configurer);
    }

    @Override
    protected void fillMenuBar(IMenuManager bar) {
        bar.add(new MenuManager(Messages.Menu_file, IWorkbenchActionConstants.M_FILE));
        bar.add(new MenuManager(Messages.Menu_edit, IWorkbenchActionConstants.M_EDIT));
        bar.add(new MenuManager(Messages.Menu_plan, "plan"));
        bar.add(new MenuManager(Messages.Menu_view, "view"));
        bar.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
        bar.add(new MenuManager(Messages.Menu_help, IWorkbenchActionConstants.M_HELP));
    }
}
