package org.amberyard.workbench;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;

import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.preferences.DefaultScope;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbenchPreferenceConstants;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.extension.ExtensionContext.Store.CloseableResource;

/** The real workbench on a thread of its own, from its start-up until it is closed. */
final class RunningWorkbench implements CloseableResource {

    private static final long TIMEOUT_SECONDS = 60;

    private final CompletableFuture<Display> started = new CompletableFuture<>();
    private final LoggedErrors errors = new LoggedErrors();
    private final Thread thread = new Thread(this::run, "workbench");

    private RunningWorkbench() {
    }

    /** Starts the workbench and waits until its first window is open. */
    static RunningWorkbench start() {
        RunningWorkbench workbench = new RunningWorkbench();
        Platform.addLogListener(workbench.errors);
        workbench.thread.setDaemon(true);
        workbench.thread.start();
        workbench.started.orTimeout(TIMEOUT_SECONDS, TimeUnit.SECONDS).join();
        return workbench;
    }

    Display display() {
        return started.join();
    }

    LoggedErrors errors() {
        return errors;
    }

    /** Fails when the program has logged errors, be it while it does what was asked of the event thread up to now. */
    void failIfErrors() {
        display().syncExec(() -> {});
        errors.failIfAny();
    }

    @Override
    public void close() throws InterruptedException {
        display().syncExec(() -> PlatformUI.getWorkbench().close());
        thread.join(TimeUnit.SECONDS.toMillis(TIMEOUT_SECONDS));
        Platform.removeLogListener(errors);
        errors.failIfAny();
    }

    private void run() {
        try {
            Display display = PlatformUI.createDisplay();
            useOwnKeys();
            PlatformUI.createAndRunWorkbench(display, new ReportingAdvisor(display));
            display.dispose();
        } catch (RuntimeException | Error e) {
            started.completeExceptionally(e);
        }
    }

    /** Tests run without the product, which would choose the keys. */
    private static void useOwnKeys() {
        DefaultScope.INSTANCE.getNode("org.eclipse.ui").put(IWorkbenchPreferenceConstants.KEY_CONFIGURATION_ID,
                "org.amberyard.workbench.keys");
    }

    /** Tells the tests when the workbench is ready; without it they would have to poll. */
    private final class ReportingAdvisor extends AmberyardWorkbenchAdvisor {

        private final Display display;

        ReportingAdvisor(Display display) {
            this.display = display;
        }

        @Override
        public void postStartup() {
            super.postStartup();
            started.complete(display);
        }
    }
}
