package org.amberyard.fuzz;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;
import org.amberyard.exchange.sheet.SheetKind;

/**
 * Reads files with changed bytes: each is read, or refused with reasons, in a few seconds; nothing else may happen, and a study
 * that a file was refused for is as it was.
 */
class ImportersTest {
    private static final List<String> TABLES = List.of("agency.txt", "routes.txt", "calendar.txt", "calendar_dates.txt", "stops.txt",
            "trips.txt", "stop_times.txt", "shapes.txt", "frequencies.txt");
    private static final List<String> SHEETS = SheetKind.ALL.stream().map(SheetKind::id).toList();

    private static Path folder;

    @BeforeContainer
    static void makeFolder() throws IOException {
        folder = Files.createTempDirectory("fuzz");
        Files.createDirectory(folder.resolve("tables"));
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

    private static void read(String name, List<Mutation> changes, Importer importer) throws IOException {
        new Trial(importer).of(Files.write(folder.resolve(name), Mutation.all(seed(name), changes)));
    }

    @Property
    void greenButton(@ForAll("mutations") List<Mutation> changes) throws IOException {
        read("meter.xml", changes, Importer.METER);
    }

    @Property
    void meterTable(@ForAll("mutations") List<Mutation> changes) throws IOException {
        read("meter.csv", changes, Importer.METER);
    }

    @Property
    void hourlyWeather(@ForAll("mutations") List<Mutation> changes) throws IOException {
        read("vale.epw", changes, Importer.WEATHER);
    }

    @Property
    void normals(@ForAll("mutations") List<Mutation> changes) throws IOException {
        read("normals.csv", changes, Importer.WEATHER);
    }

    @Property
    void driveTable(@ForAll("mutations") List<Mutation> changes) throws IOException {
        read("drive.csv", changes, Importer.DRIVE);
    }

    @Property
    void drivePoints(@ForAll("mutations") List<Mutation> changes) throws IOException {
        read("drive.gpx", changes, Importer.DRIVE);
    }

    @Property
    void scheduleTables(@ForAll("mutations") List<Mutation> changes, @ForAll @IntRange(max = 8) int table) throws IOException {
        Path schedule = Files.createDirectories(folder.resolve("vale"));
        for (int i = 0; i < TABLES.size(); i++) {
            byte[] text = seed("vale/" + TABLES.get(i));
            Files.write(schedule.resolve(TABLES.get(i)), i == table ? Mutation.all(text, changes) : text);
        }
        new Trial(Importer.SCHEDULE).of(schedule);
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
        new Trial(Importer.SCHEDULE).of(zip);
    }

    @Property
    void districtTable(@ForAll("mutations") List<Mutation> changes, @ForAll @IntRange(max = 12) int table) throws IOException {
        read("tables/" + SHEETS.get(table) + ".csv", changes, Importer.TABLE);
    }

    /** Without changes every seed is read, or the properties would try only refusals. */
    @Property(tries = 1)
    void seedsAreSound() throws Exception {
        for (String name : List.of("meter.xml", "meter.csv")) {
            Importer.METER.take(Files.write(folder.resolve(name), seed(name)));
        }
        for (String name : List.of("vale.epw", "normals.csv")) {
            Importer.WEATHER.take(Files.write(folder.resolve(name), seed(name)));
        }
        for (String name : List.of("drive.csv", "drive.gpx")) {
            Importer.DRIVE.take(Files.write(folder.resolve(name), seed(name)));
        }
        for (String kind : SHEETS) {
            Importer.TABLE.take(Files.write(folder.resolve("tables").resolve(kind + ".csv"), seed("tables/" + kind + ".csv")));
        }
        Path schedule = Files.createDirectories(folder.resolve("sound"));
        for (String table : TABLES) {
            Files.write(schedule.resolve(table), seed("vale/" + table));
        }
        Importer.SCHEDULE.take(schedule);
    }
}
