package org.amberyard.model.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Random;
import org.amberyard.model.SmallStudy;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that are refused, and what is said then. */
class StudyRefusalTest {
    private static final String REMEDY = " Ask for the file again, or put it right in a text editor.";

    @TempDir
    private Path folder;
    private Path file;
    private String good;

    @BeforeEach
    void saveGoodFile() throws Exception {
        file = folder.resolve("fleet.amberyard");
        StudyFile.save(new SmallStudy().study, file);
        good = Files.readString(file);
    }

    @Test
    void externalEntitiesAreRefusedUnread() throws Exception {
        Path secret = Files.writeString(folder.resolve("secret.txt"), "TOP SECRET");
        String message = refusal("<?xml version=\"1.0\"?>\n<!DOCTYPE s [<!ENTITY x SYSTEM \"" + secret.toUri() + "\">]>\n"
                + body().replace("name=\"New study\"", "name=\"&x;\""));
        assertTrue(message.contains("it declares a document type (DOCTYPE). Study files never do"), message);
        assertFalse(message.contains("SECRET"), message);
    }

    @Test
    void entitiesThatGrowAreRefusedAtOnce() {
        StringBuilder laughs = new StringBuilder("<?xml version=\"1.0\"?>\n<!DOCTYPE s [<!ENTITY a0 \"ha\">");
        for (int i = 1; i < 30; i++) {
            laughs.append("<!ENTITY a").append(i).append(" \"").append(("&a" + (i - 1) + ";").repeat(10)).append("\">");
        }
        String bomb = laughs + "]>\n" + body().replace("name=\"New study\"", "name=\"&a29;\"");
        assertTimeoutPreemptively(Duration.ofSeconds(5),
                () -> assertTrue(refusal(bomb).contains("it declares a document type (DOCTYPE)")));
    }

    @Test
    void parameterEntitiesAreRefused() throws Exception {
        assertTrue(refusal("<!DOCTYPE s [<!ENTITY % p SYSTEM \"http://127.0.0.1:9/x.dtd\"> %p;]>" + body())
                .contains("(DOCTYPE)"));
    }

    @Test
    void largeFilesAreRefused() throws Exception {
        try (RandomAccessFile large = new RandomAccessFile(file.toFile(), "rw")) {
            large.setLength(StudyFile.MAX_BYTES + 1L);
        }
        assertEquals("“fleet.amberyard” cannot be opened: it is larger than 64 MiB, the most that a study may have. "
                + "Choose another file.", refusal());
    }

    @Test
    void newerVersionsAreRefused() throws Exception {
        String expected = "“fleet.amberyard” cannot be opened: it was written by a newer version (format 2; this program "
                + "reads up to 1). Install the newer version of the program to open it.";
        assertEquals(expected, refusal(good.replace("formatVersion=\"1\"", "formatVersion=\"2\" newThing=\"x\"")));
        assertEquals(expected, refusal(good.replace("urn:amberyard:study:1", "urn:amberyard:study:2")));
    }

    @Test
    void versionsThatAreNoneAreRefused() throws Exception {
        assertEquals(opened("line 13: its format version “one” is not a whole number above 0."),
                refusal(good.replace("formatVersion=\"1\"", "formatVersion=\"one\"")));
        assertTrue(refusal(good.replace("formatVersion=\"1\"", "formatVersion=\"0\"")).contains("version “0”"));
    }

    @Test
    void emptyAndForeignFilesAreRefused() throws Exception {
        assertEquals(opened("line 1: it is not XML, or it is damaged there."), refusal(""));
        assertEquals(opened("line 1: it is not XML, or it is damaged there."), refusal("PK\u0003\u0004 a spreadsheet"));
        assertEquals(opened("line 1: it is not a study but begins with “html”."), refusal("<html></html>"));
        assertEquals(opened("line 1: it is not a study but begins with “Study”."), refusal("<Study/>"));
    }

    @Test
    void truncatedFilesAreRefused() throws Exception {
        String message = refusal(good.substring(0, good.length() / 2));
        assertTrue(message.matches("“fleet.amberyard” cannot be opened: line \\d+: it is damaged or cut off there "
                + "\\(.*\\)\\." + REMEDY), message);
    }

    @Test
    void bytesThatAreNoTextAreRefused() throws Exception {
        byte[] bytes = good.getBytes(StandardCharsets.UTF_8);
        bytes[bytes.length / 2] = (byte) 0xff;
        Files.write(file, bytes);
        assertTrue(refusal().contains(": it is damaged there: these bytes are not text."), refusal());
    }

    @Test
    void thePreviousVersionIsOffered() throws Exception {
        Files.copy(file, folder.resolve("fleet.amberyard~"));
        assertEquals("“fleet.amberyard” cannot be opened: line 1: it is not XML, or it is damaged there. "
                + "The version before it is kept beside it as “fleet.amberyard~”: open that one.", refusal(""));
    }

    @Test
    void unknownFieldsAreNamed() throws Exception {
        String spoiled = good.replace("<buses\n", "<buses paint=\"yellow\"\n");
        assertEquals(opened("line " + endOfTag("<buses") + ": unknown field “paint” in bus B01."), refusal(spoiled));
    }

    @Test
    void unknownElementsAreNamed() throws Exception {
        assertTrue(refusal(good.replace("</study:Study>", "  <boats/>\n</study:Study>"))
                .contains("unknown field “boats” in study New study."));
    }

    @Test
    void unknownKindsAreNamed() throws Exception {
        assertTrue(refusal(good.replace("\"vehicles:ElectricType\"", "\"vehicles:HydrogenType\""))
                .contains("unknown kind of element “HydrogenType”."));
        assertTrue(refusal(good.replace("urn:amberyard:vehicles:1", "urn:amberyard:vehicles:9"))
                .contains("unknown part of a study “urn:amberyard:vehicles:9”."));
    }

    @Test
    void kindsInTheWrongPlaceAreRefused() throws Exception {
        String message = refusal(good.replace("xsi:type=\"vehicles:ElectricType\"", "xsi:type=\"prices:FluidPrice\""));
        assertTrue(message.startsWith("“fleet.amberyard” cannot be opened: "), message);
    }

    @Test
    void valuesThatAreNoneAreNamed() throws Exception {
        assertTrue(refusal(good.replaceFirst("distanceKm=\"30.0\"", "distanceKm=\"far\""))
                .contains("“far” is no value for the field “distanceKm” of run "));
        assertTrue(refusal(good.replaceFirst("kind=\"morning\"", "kind=\"dawn\""))
                .contains("“dawn” is no value for the field “kind” of run "));
    }

    @Test
    void referencesToNothingAreNamed() throws Exception {
        assertTrue(refusal(good.replaceFirst("route=\"route-1\"", "route=\"route-99\""))
                .contains("it refers to “route-99”, which it does not hold."));
    }

    @Test
    void referencesToOtherFilesAreRefused() throws Exception {
        Files.writeString(folder.resolve("other.amberyard"), good);
        String message = refusal(good.replaceFirst("\\s+route=\"route-1\"([^>]*)/>",
                "$1><route href=\"other.amberyard#route-1\"/></buses>"));
        assertTrue(message.contains("other.amberyard#route-1”, which it does not hold."), message);
    }

    @Test
    void idsAreUsedOnce() throws Exception {
        assertEquals(opened("the id “run-1” is used twice, by run AM of route R01 and by run PM of route R01."),
                refusal(good.replace("xmi:id=\"run-2\"", "xmi:id=\"run-1\"")));
    }

    @Test
    void moreThanOneStudyIsRefused() throws Exception {
        assertTrue(refusal("<xmi:XMI xmlns:xmi=\"http://www.omg.org/XMI\">" + body() + body() + "</xmi:XMI>")
                .contains("it is not a study but begins with “XMI”."));
    }

    @Test
    void missingFilesAndFoldersAreRefused() throws Exception {
        Files.delete(file);
        assertEquals("“fleet.amberyard” cannot be opened: there is no such file. Choose another file.", refusal());
        Files.createDirectory(file);
        assertTrue(refusal().endsWith("Check that it is a file that you may read."));
    }

    @Test
    void damageOfAnyKindEndsInARefusalOrAStudy() throws Exception {
        Random random = new Random(1);
        byte[] bytes = good.getBytes(StandardCharsets.UTF_8);
        for (int i = 0; i < 300; i++) {
            byte[] damaged = bytes.clone();
            damaged[random.nextInt(damaged.length)] = (byte) random.nextInt(256);
            Files.write(file, damaged);
            try {
                StudyFile.load(file);
            } catch (StudyFileException expected) {
                assertTrue(expected.getMessage().startsWith("“fleet.amberyard” cannot be opened: "));
            }
        }
    }

    private String body() {
        return good.substring(good.indexOf("<study:Study"));
    }

    /** Line on which a start tag ends, which is where the XML reader stands when it knows the tag's attributes. */
    private long endOfTag(String tag) {
        return good.substring(0, good.indexOf('>', good.indexOf(tag))).lines().count();
    }

    private static String opened(String reason) {
        return "“fleet.amberyard” cannot be opened: " + reason + REMEDY;
    }

    private String refusal(String content) throws IOException {
        Files.writeString(file, content);
        return refusal();
    }

    private String refusal() {
        return assertThrows(StudyFileException.class, () -> StudyFile.load(file)).getMessage();
    }
}
