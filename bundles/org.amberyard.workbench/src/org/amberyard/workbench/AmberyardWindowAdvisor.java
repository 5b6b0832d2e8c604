package org.amberyard.workbench;

import org.amberyard.workbench.handlers.FileDrop;
import org.amberyard.workbench.handlers.FirstStudy;
import org.amberyard.workbench.handlers.ShownHistory;
import org.amberyard.workbench.layout.ShownPurpose;
import org.amberyard.workbench.layout.ViewTitles;
import org.amberyard.workbench.look.StatusText;
import org.amberyard.workbench.session.ActiveSession;
import org.amberyard.workbench.session.StudySession;
import org.amberyard.workbench.welcome.Welcome;
import org.eclipse.jface.action.StatusLineManager;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** Sets up a window: its size, its title, and the study that it begins with. */
final class AmberyardWindowAdvisor extends WorkbenchWindowAdvisor {

    private static final Point LEAST_FIRST_SIZE = new Point(1280, 800);
    /** Of a large screen; charts and tables have use for the room. */
    private static final double FIRST_SHARE = 0.9;

    AmberyardWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
        super(configurer);
    }

    @Override
    public ActionBarAdvisor createActionBarAdvisor(IActionBarConfigurer configurer) {
        return new AmberyardActionBars(configurer);
    }

    @Override
    public void preWindowOpen() {
        IWorkbenchWindowConfigurer window = getWindowConfigurer();
        window.setInitialSize(firstSize(Display.getCurrent().getPrimaryMonitor().getClientArea()));
        window.setTitle(Messages.Window_title);
        window.setShowStatusLine(true);
        window.setShowCoolBar(false);
        window.setShowPerspectiveBar(false);
        window.setShowProgressIndicator(false);
    }

    private static Point firstSize(Rectangle screen) {
        return new Point(Math.max(LEAST_FIRST_SIZE.x, (int) (FIRST_SHARE * screen.width)),
                Math.max(LEAST_FIRST_SIZE.y, (int) (FIRST_SHARE * screen.height)));
    }

    @Override
    public void postWindowOpen() {
        Shell shell = getWindowConfigurer().getWindow().getShell();
        // The layout that a killed process has left still has the tabs of its studies, which nothing stands behind any more.
        getWindowConfigurer().getWindow().getActivePage().closeAllEditors(false);
        keepOnScreen(shell);
        ViewTitles.renew(getWindowConfigurer().getWindow());
        ShownPurpose.follow(getWindowConfigurer().getWindow());
        ShownHistory.follow(getWindowConfigurer().getWindow());
        Welcome.follow(getWindowConfigurer().getWindow().getActivePage());
        if (getWindowConfigurer().getActionBarConfigurer().getStatusLineManager() instanceof StatusLineManager bar) {
            StatusText.follow(bar, shell);
        }
        FileDrop.hook(shell, getWindowConfigurer().getWindow().getActivePage());
        ActiveSession.here().follow(shell, session -> getWindowConfigurer().setTitle(session.map(StudySession::title)
                .map(t -> NLS.bind(Messages.Window_titleWithStudy, t)).orElse(Messages.Window_title)));
        StartupTime.tell(shell);
        // The window is on the screen before anything asks a question.
        shell.getDisplay().asyncExec(() -> openFirstStudy(shell));
    }

    private void openFirstStudy(Shell shell) {
        if (!shell.isDisposed()) {
            FirstStudy.open(getWindowConfigurer().getWindow().getActivePage());
        }
    }

    /** A window that was last used on a larger screen still has to be reached on this one. */
    private static void keepOnScreen(Shell shell) {
        Rectangle screen = shell.getMonitor().getClientArea();
        Rectangle bounds = shell.getBounds();
        int width = Math.min(bounds.width, screen.width);
        int height = Math.min(bounds.height, screen.height);
        int x = Math.max(screen.x, Math.min(bounds.x, screen.x + screen.width - width));
        int y = Math.max(screen.y, Math.min(bounds.y, screen.y + screen.height - height));
        shell.setBounds(x, y, width, height);
    }
}
