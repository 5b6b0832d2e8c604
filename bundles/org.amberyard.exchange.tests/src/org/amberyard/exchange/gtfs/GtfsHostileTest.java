package org.amberyard.exchange.gtfs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.ReadingProgress;
import org.amberyard.model.io.StudyDefaults;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GtfsHostileTest {
    @TempDir
    Path folder;

    private static GtfsFeed open(Path path) throws ImportException {
        return GtfsFeed.open(path, ReadingProgress.NONE);
    }

    private static String refusal(Path path) {
        return assertThrows(ImportException.class, () -> open(path)).getMessage();
    }

    @Test
    void aZipFileIsReadWhereverItsTablesAre() throws Exception {
        for (String prefix : new String[] {"", "vale/2026/"}) {
            GtfsFeed feed = open(new GtfsText().zip(folder.resolve("vale.zip"), prefix));
            assertEquals(2, GtfsImport.read(feed, new GtfsChoice(feed.kinds().get(0), Set.of("B1", "B2")), ReadingProgress.NONE)
                    .update(StudyDefaults.create()).changes().stream().filter(c -> c.startsWith("route ")).count());
        }
    }

    @Test
    void namesThatClimbOutOfTheZipAreRefused() throws IOException {
        for (String prefix : new String[] {"../", "/", "a/../../", "C:/", "a\\"}) {
            String refusal = refusal(new GtfsText().zip(folder.resolve("evil.zip"), prefix));
            assertTrue(refusal.contains("whose name leads out of it. Schedules have no such entries."), refusal);
        }
    }

    @Test
    void whatIsNoScheduleIsRefused() throws IOException {
        assertTrue(refusal(Files.writeString(folder.resolve("no.zip"), "no zip")).startsWith("no.zip: The file is no zip file, or it is "
                + "damaged:"));
        assertTrue(refusal(new GtfsText().without("trips.txt").zip(folder.resolve("other.zip"), "")).endsWith("The zip file has no "
                + "trips.txt; is it a GTFS schedule?"));
        assertTrue(refusal(Files.createDirectory(folder.resolve("empty"))).contains("trips.txt: The file is missing"));
    }

    /** A hundred kilobytes of zip that swell to a hundred megabytes of empty lines. */
    @Test
    void aZipBombIsStopped() throws IOException {
        Path bomb = folder.resolve("bomb.zip");
        byte[] lines = "\n".repeat(1 << 20).getBytes(StandardCharsets.US_ASCII);
        try (OutputStream out = Files.newOutputStream(bomb); ZipOutputStream zip = new ZipOutputStream(out)) {
            zip.putNextEntry(new ZipEntry("agency.txt"));
            zip.write("agency_name".getBytes(StandardCharsets.US_ASCII));
            for (int i = 0; i < 100; i++) {
                zip.write(lines);
            }
            zip.putNextEntry(new ZipEntry("trips.txt"));
            zip.closeEntry();
        }
        String refusal = refusal(bomb);
        assertTrue(refusal.startsWith("agency.txt: The file cannot be read: agency.txt swells to more than "), refusal);
    }

    @Test
    void readingEndsWhenNearlyEveryRowIsWrong() throws IOException {
        Path wrong = new GtfsText().table("agency.txt", "agency_name\n" + "a,b\n".repeat(100_000)).folder(folder);
        String refusal = refusal(wrong);
        assertTrue(refusal.endsWith("There are 10000 more problems of this kind or another."), refusal.substring(refusal.length() - 99));
    }

    @Test
    void hugeRowsAndWrongEncodingsAreRefused() throws Exception {
        assertTrue(refusal(new GtfsText().table("routes.txt", "route_id\n\"" + "x".repeat(50_000)).folder(folder))
                .contains("routes.txt, row 2: The row is longer than 32,768 characters"));
        Path latin = new GtfsText().folder(folder);
        Files.write(latin.resolve("routes.txt"), "route_id,route_short_name\nr12,B\u00e4r\n".getBytes(StandardCharsets.ISO_8859_1));
        assertEquals("routes.txt, row 1: The file is not UTF-8 text near this row; save it again as UTF-8.", refusal(latin));
        Path wide = new GtfsText().folder(folder);
        Files.write(wide.resolve("routes.txt"), "\ufeffroute_id,route_short_name\nr12,B\u00e4r\nr14,Hill\n".getBytes(StandardCharsets.UTF_16LE));
        GtfsFeed feed = open(wide);
        assertEquals("B1: routes B\u00e4r, Hill, 3 trips", feed.blocks(feed.kinds().get(0)).get(0).words());
    }

    @Test
    void readingCanBeStopped() throws IOException {
        StringBuilder stops = new StringBuilder("agency_name\n");
        for (int i = 0; i < 10_000; i++) {
            stops.append("Agency ").append(i).append('\n');
        }
        Path many = new GtfsText().table("agency.txt", stops.toString()).folder(folder);
        assertThrows(CancellationException.class, () -> GtfsFeed.open(many, new ReadingProgress() {
            @Override
            public void reached(String file, long rows) {
                throw new AssertionError("It was stopped before");
            }

            @Override
            public boolean isStopped() {
                return true;
            }
        }));
    }
}
