package org.amberyard.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.MeterSource;
import org.amberyard.exchange.ReadingProgress;
import org.amberyard.exchange.TraceImport;
import org.amberyard.exchange.gtfs.GtfsBlock;
import org.amberyard.exchange.gtfs.GtfsChoice;
import org.amberyard.exchange.gtfs.GtfsFeed;
import org.amberyard.exchange.gtfs.GtfsImport;
import org.amberyard.exchange.sheet.Sheet;
import org.amberyard.exchange.sheet.SheetImport;
import org.amberyard.exchange.sheet.SheetReader;
import org.amberyard.exchange.weather.WeatherSource;
import org.amberyard.model.io.StudyDefaults;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** The importers, each with what must hold of all that it reads. */
enum Importer {
    /** Interval data of a meter. */
    METER {
        @Override
        void take(Path file) throws ImportException {
            MeterSource source = MeterSource.read(file, ReadingProgress.NONE);
            for (int meter = 0; meter < source.meters().size(); meter++) {
                assertFalse(source.load(meter, ZoneOffset.UTC, List.of()).sentences().isEmpty());
            }
        }
    },
    /** Hourly weather or normals. */
    WEATHER {
        @Override
        void take(Path file) throws ImportException {
            WeatherSource source = WeatherSource.read(file, ReadingProgress.NONE);
            for (int station = 0; station < source.stations().size(); station++) {
                Study study = StudyDefaults.create();
                source.load(station, study).update().apply();
                assertTrue(study.getSite().getClimate().stream().allMatch(m -> Math.abs(m.getMeanLowC()) <= 70 && m.getSunShare() <= 1));
            }
        }
    },
    /** A drive as a table or as points. */
    DRIVE {
        @Override
        void take(Path file) throws ImportException {
            TraceImport.read(file);
        }
    },
    /** A transit schedule. */
    SCHEDULE {
        @Override
        void take(Path file) throws ImportException {
            GtfsFeed feed = GtfsFeed.open(file, ReadingProgress.NONE);
            for (var days : feed.kinds().stream().limit(2).toList()) {
                Set<String> blocks = feed.blocks(days).stream().map(GtfsBlock::id).collect(Collectors.toSet());
                GtfsImport imported = GtfsImport.read(feed, new GtfsChoice(days, blocks), ReadingProgress.NONE);
                Study study = StudyDefaults.create();
                imported.update(study).apply();
                assertFalse(imported.sentences(study).isEmpty());
                assertTrue(imported.update(study).changes().isEmpty(), "a second import changes nothing");
                assertTrue(study.getRoutes().stream().flatMap(r -> r.getRuns().stream()).allMatch(r -> r.getDepartureMin() >= 0
                        && r.getDepartureMin() < 1440 && r.getDurationMin() > 0 && r.getDistanceKm() > 0));
            }
        }
    },
    /** A table of a district. */
    TABLE {
        @Override
        void take(Path file) throws ImportException {
            for (Sheet sheet : SheetReader.read(file, ReadingProgress.NONE)) {
                Study study = EcoreUtil.copy(EXAMPLE);
                Optional<SheetImport> made = SheetImport.recognised(sheet, study);
                if (made.isPresent()) {
                    made.get().into(study);
                    assertEquals(List.of(), made.get().preview(study).changes(), "a second import changes nothing");
                }
            }
        }
    };

    private static final Study EXAMPLE = example();

    private static Study example() {
        try {
            return StudyFile.load(Path.of(System.getProperty("basedir", ".")).resolve("../../examples/ostrick-vale/ostrick-vale.amberyard").normalize());
        } catch (StudyFileException e) {
            throw new UncheckedIOException(new IOException(e));
        }
    }

    /** Reads a file, and takes from it all that an import would. */
    abstract void take(Path file) throws ImportException;
}
