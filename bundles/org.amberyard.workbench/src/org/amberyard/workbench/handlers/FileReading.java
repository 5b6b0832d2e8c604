package org.amberyard.workbench.handlers;

import java.nio.file.Path;
import java.util.concurrent.CancellationException;
import org.amberyard.exchange.ImportException;

/** Reads a file in the background. */
public abstract class FileReading<T> extends Reading<T> {

    private final Path file;

    /** Will read a file. */
    protected FileReading(Path file) {
        super(file.getFileName().toString());
        this.file = file;
    }

    /**
     * Reads the file.
     *
     * @throws ImportException when it is not understood
     * @throws CancellationException when it is no longer wanted
     */
    protected abstract T read(Path path) throws ImportException;

    @Override
    final T read() throws ImportException {
        return read(file);
    }
}
