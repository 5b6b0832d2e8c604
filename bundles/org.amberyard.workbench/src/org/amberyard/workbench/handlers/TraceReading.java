package org.amberyard.workbench.handlers;

import java.nio.file.Path;
import java.util.Optional;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.TraceImport;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;

/** Reads and cleans a drive in the background; what was cancelled has no outcome. */
public final class TraceReading extends Job {

    private final Path file;
    private TraceImport imported;
    private ImportException refusal;

    /** Will read a file. */
    public TraceReading(Path file) {
        super(NLS.bind(Messages.Trace_reading, file.getFileName()));
        this.file = file;
        setUser(true);
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        monitor.beginTask(getName(), IProgressMonitor.UNKNOWN);
        try {
            imported = TraceImport.read(file);
        } catch (ImportException e) {
            refusal = e;
        } finally {
            monitor.done();
        }
        return monitor.isCanceled() ? Status.CANCEL_STATUS : Status.OK_STATUS;
    }

    /** The trace, once it has been read. */
    public Optional<TraceImport> imported() {
        return Optional.ofNullable(imported);
    }

    /** Why the file was refused. */
    public Optional<ImportException> refusal() {
        return Optional.ofNullable(refusal);
    }
}
