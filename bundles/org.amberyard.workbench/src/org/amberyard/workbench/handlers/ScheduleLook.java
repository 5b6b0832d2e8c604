package org.amberyard.workbench.handlers;

import java.nio.file.Path;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.gtfs.GtfsFeed;

/** Looks into a schedule in the background: its days and blocks. */
public final class ScheduleLook extends FileReading<GtfsFeed> {
    private static final String TABLE = ".txt";

    /** Will look into a zip file, or into the folder of a table. */
    public ScheduleLook(Path file) {
        super(file);
    }

    @Override
    protected GtfsFeed read(Path path) throws ImportException {
        return GtfsFeed.open(path.toString().endsWith(TABLE) ? path.toAbsolutePath().getParent() : path, progress());
    }
}
