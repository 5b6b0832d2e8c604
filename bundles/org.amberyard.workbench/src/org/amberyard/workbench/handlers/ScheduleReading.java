package org.amberyard.workbench.handlers;

import java.nio.file.Path;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.gtfs.GtfsChoice;
import org.amberyard.exchange.gtfs.GtfsFeed;
import org.amberyard.exchange.gtfs.GtfsImport;

/** Reads the chosen blocks of a schedule in the background. */
public final class ScheduleReading extends FileReading<GtfsImport> {

    private final GtfsFeed feed;
    private final GtfsChoice choice;

    /** Will read a part of a schedule. */
    public ScheduleReading(GtfsFeed feed, GtfsChoice choice) {
        super(feed.path());
        this.feed = feed;
        this.choice = choice;
    }

    @Override
    protected GtfsImport read(Path path) throws ImportException {
        return GtfsImport.read(feed, choice, progress());
    }
}
