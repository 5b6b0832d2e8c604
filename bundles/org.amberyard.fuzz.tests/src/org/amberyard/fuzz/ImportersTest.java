package org.amberyard.fuzz;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.ImportProblem;
import org.amberyard.exchange.MeterSource;
import org.amberyard.exchange.ReadingProgress;
import org.amberyard.exchange.TraceImport;
import org.amberyard.exchange.gtfs.GtfsBlock;
import org.amberyard.exchange.gtfs.GtfsChoice;
import org.amberyard.exchange.gtfs.GtfsFeed;
import org.amberyard.exchange.gtfs.GtfsImport;
import org.amberyard.exchange.weather.WeatherSource;
import org.amberyard.model.io.StudyDefaults;
import org.amberyard.model.study.Study;

/**
 * Reads files with changed bytes: each is read, or refused with reasons, in a few seconds; nothing else may happen, and a study
 * that a file was refused for is as it was.
 */
class ImportersTest {
    private static final Duration LONG = Duration.ofSeconds(20);
    private static final List<String> TABLES = List.of("agency.txt", "routes.txt", "calendar.txt", "calendar_dates.txt", "stops.txt",
            "trips.txt", "stop_times.txt", "shapes.txt", "frequencies.txt");

    private static Path folder;

    /** Reads a file, and takes from it what an import would. */
    private interface Reading {
        void of(Path file) throws ImportException, IOException;
    }

    @BeforeContainer
    static void makeFolder() throws IOException {
        folder = Files.createTempDirectory("fuzz");
    }

    @AfterContainer
    static void removeFolder() throws IOException {
        try (var files = Files.walk(folder)) {
            for (Path file : files.sorted((a, b) -> b.compareTo(a)).toList()) {
                Files.delete(file);
            }
        }
    }

    @Provide
    Arbitrary<List<Mutation>> mutations() {
        return Mutation.some();
    }

    private static byte[] seed(String name) throws IOException {
        try (InputStream in = ImportersTest.class.getResourceAsStream("/" + name)) {
            return in.readAllBytes();
        }
    }

    private static void read(String name, List<Mutation> changes, Reading reading) throws IOException {
        read(Files.write(folder.resolve(name), Mutation.all(seed(name), changes)), reading);
    }

    private static void read(Path file, Reading reading) {
        assertTimeoutPreemptively(LONG, () -> {
            try {
                reading.of(file);
            } catch (ImportException e) {
                assertFalse(e.problems().isEmpty());
                for (ImportProblem problem : e.problems()) {
                    assertFalse(problem.message().isBlank());
                    assertTrue(problem.row() >= 0 && problem.toString().length() < 3000, problem.toString());
                }
            }
        });
    }

    private static void takeMeter(Path file) throws ImportException {
        MeterSource source = MeterSource.read(file, ReadingProgress.NONE);
        for (int meter = 0; meter < source.meters().size(); meter++) {
            assertFalse(source.load(meter, ZoneOffset.UTC, List.of()).sentences().isEmpty());
        }
    }

    private static void takeWeather(Path file) throws ImportException {
        WeatherSource source = WeatherSource.read(file, ReadingProgress.NONE);
        for (int station = 0; station < source.stations().size(); station++) {
            Study study = StudyDefaults.create();
            source.load(station, study).update().apply();
            assertTrue(study.getSite().getClimate().stream().allMatch(m -> Math.abs(m.getMeanLowC()) <= 70 && m.getSunShare() <= 1));
        }
    }

    private static void takeSchedule(Path file) throws ImportException {
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

    @Property
    void greenButton(@ForAll("mutations") List<Mutation> changes) throws IOException {
        read("meter.xml", changes, ImportersTest::takeMeter);
    }

    @Property
    void meterTable(@ForAll("mutations") List<Mutation> changes) throws IOException {
        read("meter.csv", changes, ImportersTest::takeMeter);
    }

    @Property
    void hourlyWeather(@ForAll("mutations") List<Mutation> changes) throws IOException {
        read("vale.epw", changes, ImportersTest::takeWeather);
    }

    @Property
    void normals(@ForAll("mutations") List<Mutation> changes) throws IOException {
        read("normals.csv", changes, ImportersTest::takeWeather);
    }

    @Property
    void driveTable(@ForAll("mutations") List<Mutation> changes) throws IOException {
        read("drive.csv", changes, TraceImport::read);
    }

    @Property
    void drivePoints(@ForAll("mutations") List<Mutation> changes) throws IOException {
        read("drive.gpx", changes, TraceImport::read);
    }

    @Property
    void scheduleTables(@ForAll("mutations") List<Mutation> changes, @ForAll @IntRange(max = 8) int table) throws IOException {
        Path schedule = Files.createDirectories(folder.resolve("vale"));
        for (int i = 0; i < TABLES.size(); i++) {
            byte[] text = seed("vale/" + TABLES.get(i));
            Files.write(schedule.resolve(TABLES.get(i)), i == table ? Mutation.all(text, changes) : text);
        }
        read(schedule, ImportersTest::takeSchedule);
    }

    @Property
    void scheduleZip(@ForAll("mutations") List<Mutation> changes) throws IOException {
        Path zip = folder.resolve("vale.zip");
        try (OutputStream out = Files.newOutputStream(zip); ZipOutputStream entries = new ZipOutputStream(out)) {
            for (String table : TABLES) {
                entries.putNextEntry(new ZipEntry(table));
                entries.write(seed("vale/" + table));
                entries.closeEntry();
            }
        }
        Files.write(zip, Mutation.all(Files.readAllBytes(zip), changes));
        read(zip, ImportersTest::takeSchedule);
    }

    /** Without changes every seed is read, or the properties would try only refusals. */
    @Property(tries = 1)
    void seedsAreSound() throws Exception {
        for (String name : List.of("meter.xml", "meter.csv")) {
            takeMeter(Files.write(folder.resolve(name), seed(name)));
        }
        for (String name : List.of("vale.epw", "normals.csv")) {
            takeWeather(Files.write(folder.resolve(name), seed(name)));
        }
        for (String name : List.of("drive.csv", "drive.gpx")) {
            TraceImport.read(Files.write(folder.resolve(name), seed(name)));
        }
        Path schedule = Files.createDirectories(folder.resolve("sound"));
        for (String table : TABLES) {
            Files.write(schedule.resolve(table), seed("vale/" + table));
        }
        takeSchedule(schedule);
    }
}
