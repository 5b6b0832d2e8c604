package org.amberyard.exchange.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Date;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.amberyard.model.io.SteadyZip;
import org.amberyard.model.io.StudyDefaults;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A template tells nothing of when it was made, so that the same study gives the same file. */
class SheetTemplateTest {
    @TempDir
    private Path folder;

    @Test
    void noTimeOfTheClockStandsInAWorkbook() throws Exception {
        for (SheetKind kind : SheetKind.ALL) {
            Path file = folder.resolve(kind.id() + ".xlsx");
            new SheetTemplate(kind, StudyDefaults.create()).write(file);
            int entries = 0;
            try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(file))) {
                for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                    assertEquals(LocalDateTime.of(2000, 1, 1, 0, 0), entry.getTimeLocal(), entry.getName());
                    entries++;
                }
            }
            assertTrue(entries > 5, entries + " entries");
            try (InputStream in = Files.newInputStream(file); XSSFWorkbook book = new XSSFWorkbook(in)) {
                POIXMLProperties.CoreProperties core = book.getProperties().getCoreProperties();
                assertEquals(new Date(SteadyZip.ALWAYS_MS), core.getCreated());
                assertEquals(new Date(SteadyZip.ALWAYS_MS), core.getModified());
                assertEquals(kind.label(), book.getSheetName(0));
            }
        }
    }
}
