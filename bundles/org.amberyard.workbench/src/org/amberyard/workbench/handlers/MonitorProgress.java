package org.amberyard.workbench.handlers;

import java.util.Locale;
import org.amberyard.exchange.ReadingProgress;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.osgi.util.NLS;

/** Shows in a monitor how many rows have been read; stops when the monitor is cancelled. */
record MonitorProgress(IProgressMonitor monitor) implements ReadingProgress {

    @Override
    public void reached(String file, long rows) {
        monitor.subTask(NLS.bind(Messages.Rows_reached, file,
                String.format(Locale.getDefault(Locale.Category.FORMAT), "%,d", rows)));
    }

    @Override
    public boolean isStopped() {
        return monitor.isCanceled();
    }
}
