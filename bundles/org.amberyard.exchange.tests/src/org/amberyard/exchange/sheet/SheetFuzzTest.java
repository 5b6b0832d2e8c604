package org.amberyard.exchange.sheet;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.ReadingProgress;
import org.amberyard.model.study.Study;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Damaged files are read or refused, and never do anything else; the same damage at every run. */
class SheetFuzzTest {
    private static final int TEXTS = 180;
    private static final int WORKBOOKS = 100;
    private static final String[] SPITE = {"\"", ";", "\t", "\n", "=1+1", "-", "9e999", "NaN", "\u0000", "12/31/9999", "é", "B01", "1,2,3", "(", "%", " km"};

    @TempDir
    private Path folder;
    private Study study;

    @BeforeEach
    void load() throws Exception {
        study = SampleSheets.example();
    }

    @Test
    @Timeout(300)
    void damagedTexts() throws Exception {
        Random random = new Random(20260930);
        for (SheetKind kind : SheetKind.ALL) {
            Path template = folder.resolve("t.csv");
            new SheetTemplate(kind, study).write(template);
            String sound = Files.readString(template);
            int read = 0;
            for (int i = 0; i < TEXTS / SheetKind.ALL.size(); i++) {
                read += reads(folder.resolve("d.csv"), damaged(sound, random).getBytes(StandardCharsets.UTF_8)) ? 1 : 0;
            }
            assertTrue(read > 0, "some are still tables of " + kind.id());
        }
    }

    private static String damaged(String sound, Random random) {
        StringBuilder text = new StringBuilder(sound);
        for (int i = random.nextInt(6); i >= 0; i--) {
            int at = random.nextInt(text.length() + 1);
            if (random.nextBoolean()) {
                text.insert(at, SPITE[random.nextInt(SPITE.length)]);
            } else {
                text.delete(at, Math.min(text.length(), at + random.nextInt(20)));
            }
        }
        return text.toString();
    }

    /** True when the bytes were a table; what it says is then tried on the study. */
    private boolean reads(Path file, byte[] bytes) throws IOException {
        Files.write(file, bytes);
        try {
            for (Sheet sheet : SheetReader.read(file, ReadingProgress.NONE)) {
                SheetImport.recognised(sheet, study).ifPresent(s -> s.preview(study));
            }
            return true;
        } catch (ImportException e) {
            assertTrue(e.problems().stream().noneMatch(p -> p.message().isBlank()), "every refusal says why");
            return false;
        }
    }

    @Test
    @Timeout(300)
    void damagedWorkbooks() throws Exception {
        Random random = new Random(19700101);
        Path template = folder.resolve("t.xlsx");
        new SheetTemplate(SheetKind.byId("buses").orElseThrow(), study).write(template);
        byte[] sound = Files.readAllBytes(template);
        List<String> parts = List.of("xl/worksheets/sheet1.xml", "xl/sharedStrings.xml", "xl/styles.xml", "xl/workbook.xml", "[Content_Types].xml");
        for (int i = 0; i < WORKBOOKS; i++) {
            byte[] bytes = i % 2 == 0 ? flipped(sound, random) : rewritten(sound, parts.get(random.nextInt(parts.size())), random);
            reads(folder.resolve("d.xlsx"), bytes);
        }
        assertTrue(reads(folder.resolve("d.xlsx"), sound));
    }

    private static byte[] flipped(byte[] sound, Random random) {
        byte[] bytes = sound.clone();
        for (int i = random.nextInt(10); i >= 0; i--) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
        return bytes;
    }

    /** The same package with one of its parts damaged as text. */
    private static byte[] rewritten(byte[] sound, String part, Random random) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(sound)); ZipOutputStream out = new ZipOutputStream(bytes)) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                out.putNextEntry(new ZipEntry(entry.getName()));
                byte[] content = in.readAllBytes();
                out.write(entry.getName().equals(part) ? damaged(new String(content, StandardCharsets.UTF_8), random).getBytes(StandardCharsets.UTF_8)
                        : content);
            }
        }
        return bytes.toByteArray();
    }
}
