package org.amberyard.workbench.handlers;

import java.nio.file.Path;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.MeterSource;

/** Reads a meter's interval data in the background. */
public final class MeterReading extends FileReading<MeterSource> {

    /** Will read a file. */
    public MeterReading(Path file) {
        super(file);
    }

    @Override
    protected MeterSource read(Path path) throws ImportException {
        return MeterSource.read(path, progress());
    }
}
