package org.amberyard.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;
import org.amberyard.model.io.StudyDefaults;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.io.StudyFileException;

/** Opens study files with changed bytes: each is opened, or refused by name with a reason, in a few seconds. */
class StudyFilesTest {
    private static final Duration LONG = Duration.ofSeconds(20);

    private static Path folder;
    private static byte[] seed;

    @BeforeContainer
    static void saveSeed() throws IOException, StudyFileException {
        folder = Files.createTempDirectory("fuzz");
        Path file = folder.resolve("seed.amberyard");
        StudyFile.save(StudyDefaults.create(), file);
        seed = Files.readAllBytes(file);
        Files.delete(file);
    }

    @AfterContainer
    static void removeFolder() throws IOException {
        Files.deleteIfExists(folder.resolve("damaged.amberyard"));
        Files.delete(folder);
    }

    @Provide
    Arbitrary<List<Mutation>> mutations() {
        return Mutation.some();
    }

    /** Damage that was once answered by something that only a programmer understands. */
    @Example
    void aKindWithoutItsPartIsSaidSo() throws IOException {
        String text = new String(seed, StandardCharsets.UTF_8);
        Path file = Files.writeString(folder.resolve("damaged.amberyard"), text.replace("\"prices:PackPrice\"", "\"prices;PackPrice\""));
        String refusal = assertThrows(StudyFileException.class, () -> StudyFile.load(file)).getMessage();
        assertTrue(refusal.contains("an element does not say of which part of a study it is."), refusal);
        assertTrue(refusal.contains("unknown kind of element “prices;PackPrice”"), refusal);
    }

    /** Bytes that are no text, near the beginning or far down, are said once, in the refusal, and not on the error stream too. */
    @Example
    void bytesThatAreNoTextAreRefusedWithoutNoise() throws IOException {
        ByteArrayOutputStream noise = new ByteArrayOutputStream();
        PrintStream before = System.err;
        System.setErr(new PrintStream(noise, true, StandardCharsets.UTF_8));
        try {
            for (int at : new int[] {800, seed.length / 2}) {
                byte[] wrong = seed.clone();
                System.arraycopy(new byte[] {(byte) 0xf4, ' ', (byte) 0xff}, 0, wrong, at, 3);
                Path file = Files.write(folder.resolve("damaged.amberyard"), wrong);
                String refusal = assertThrows(StudyFileException.class, () -> StudyFile.load(file)).getMessage();
                assertTrue(refusal.contains("it is damaged there: these bytes are not text."), refusal);
            }
        } finally {
            System.setErr(before);
        }
        assertEquals("", noise.toString(StandardCharsets.UTF_8));
    }

    /** A document type whose declaration is damaged, for which the parser of XML has no message. */
    @Example
    void aDamagedDocumentTypeIsRefused() throws IOException {
        Path file = Files.writeString(folder.resolve("damaged.amberyard"), "<!DOCTYPE x [<!ENTITY a '\013'>]>");
        assertTrue(assertThrows(StudyFileException.class, () -> StudyFile.load(file)).getMessage().contains("it is not XML"));
    }

    @Property
    void damagedStudiesAreOpenedOrRefused(@ForAll("mutations") List<Mutation> changes) throws IOException {
        Path file = folder.resolve("damaged.amberyard");
        Files.write(file, Mutation.all(seed, changes));
        assertTimeoutPreemptively(LONG, () -> {
            try {
                StudyFile.load(file);
            } catch (StudyFileException refused) {
                assertTrue(refused.getMessage().contains("damaged.amberyard"), refused::getMessage);
                assertFalse(refused.getMessage().contains("null"), refused::getMessage);
            }
        });
    }
}
