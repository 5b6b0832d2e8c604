package org.amberyard.workbench.handlers;

import java.nio.file.Path;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.TraceImport;

/** Reads and cleans a drive in the background. */
public final class TraceReading extends FileReading<TraceImport> {

    /** Will read a file. */
    public TraceReading(Path file) {
        super(file);
    }

    @Override
    protected TraceImport read(Path path) throws ImportException {
        return TraceImport.read(path);
    }
}
