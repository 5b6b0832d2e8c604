package org.amberyard.workbench;

import java.io.IOException;
import org.amberyard.workbench.language.Language;
import org.amberyard.workbench.look.Theme;
import org.amberyard.workbench.look.WidgetStyle;
import org.amberyard.workbench.preferences.NumberFormats;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.Platform;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.service.datalocation.Location;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.PlatformUI;

/** Runs the desktop application until its last window is closed. */
public final class Application implements IApplication {

    @Override
    public Object start(IApplicationContext context) {
        Language.keepNumbersOfSystem();
        WidgetStyle.begin();
        Display display = PlatformUI.createDisplay();
        try {
            if (!isAlone()) {
                MessageDialog.openInformation(null, Messages.Window_title, Messages.Application_running);
                return EXIT_OK;
            }
            NumberFormats.use();
            Theme.begin();
            int result = PlatformUI.createAndRunWorkbench(display, new AmberyardWorkbenchAdvisor());
            return result == PlatformUI.RETURN_RESTART ? EXIT_RESTART : EXIT_OK;
        } finally {
            display.dispose();
        }
    }

    /** Two windows over one workspace would take each other's unsaved changes for those of a program that died. */
    private static boolean isAlone() {
        Location workspace = Platform.getInstanceLocation();
        try {
            return workspace == null || !workspace.isSet() || workspace.lock();
        } catch (IOException e) {
            ILog.of(Application.class).warn(e.getMessage(), e);
            return true;
        }
    }

    @Override
    public void stop() {
        if (PlatformUI.isWorkbenchRunning()) {
            IWorkbench workbench = PlatformUI.getWorkbench();
            workbench.getDisplay().syncExec(workbench::close);
        }
    }
}
