package org.amberyard.model.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.amberyard.model.SmallStudy;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.study.Study;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StudyFileTest {
    private final SmallStudy small = new SmallStudy();
    private final Study study = small.study;
    @TempDir
    private Path folder;
    private Path file;

    @BeforeEach
    void nameFile() {
        file = folder.resolve("fleet.amberyard");
    }

    @Test
    void whatIsSavedIsLoadedAgain() throws StudyFileException {
        study.setDescription("Zeile 1\nZeile 2 \t “quoted” <&> \" ' ä € 🚌 ");
        study.setNote("");
        small.diesel.setCurbMassKg(0.1 + 0.2);
        StudyFile.save(study, file);
        Study loaded = StudyFile.load(file);
        assertNotSame(study, loaded);
        assertTrue(EcoreUtil.equals(study, loaded));
        assertEquals(study.getDescription(), loaded.getDescription());
    }

    /** A file that nobody may write is not replaced behind its owner's back, though its folder would let it. */
    @Test
    void aWriteProtectedFileIsLeftAlone() throws Exception {
        StudyFile.save(study, file);
        Assumptions.assumeTrue(file.toFile().setWritable(false) && !Files.isWritable(file), "whoever may write everything");
        String before = Files.readString(file);
        study.setDescription("changed");
        StudyFileException refused = assertThrows(StudyFileException.class, () -> StudyFile.save(study, file));
        assertTrue(refused.getMessage().startsWith("“fleet.amberyard” cannot be saved because it is write-protected."),
                refused.getMessage());
        assertEquals(before, Files.readString(file));
        assertTrue(file.toFile().setWritable(true));
    }

    /** Files written when a step had one programme. */
    @Test
    void fieldsAreReadByTheNamesThatTheyHadBefore() throws Exception {
        StudyFile.save(study, file);
        String text = Files.readString(file);
        assertTrue(text.contains("programmes=\"programme-1\""), text);
        Files.writeString(file, text.replace("programmes=\"programme-1\"", "programme=\"programme-1\""));
        Study loaded = StudyFile.load(file);
        assertTrue(EcoreUtil.equals(study, loaded));
        assertEquals("Rebate", loaded.getPlans().get(1).getReplacements().get(0).getProgrammes().get(0).getName());
    }

    @Test
    void aStepKeepsSeveralProgrammes() throws Exception {
        Programme other = EcoreUtil.copy(small.rebate);
        other.setName("Other");
        other.getExcludes().add(small.rebate);
        study.getProgrammes().add(other);
        small.replacement.getProgrammes().add(other);
        StudyFile.save(study, file);
        assertTrue(EcoreUtil.equals(study, StudyFile.load(file)));
    }

    @Test
    void savingLeavesTheStudyWhereItIs() throws StudyFileException {
        StudyFile.save(study, file);
        assertNull(study.eResource());
        StudyResource resource = inResource();
        resource.setTrackingModification(true);
        small.bus.setName("B09");
        StudyFile.save(study, file);
        assertSame(resource, study.eResource());
        assertEquals(URI.createURI("memory.amberyard"), resource.getURI());
        assertTrue(resource.isModified());
    }

    @Test
    void thePreviousVersionIsKept() throws Exception {
        StudyFile.save(study, file);
        assertEquals(List.of("fleet.amberyard"), names());
        byte[] first = Files.readAllBytes(file);
        study.setName("Renamed");
        StudyFile.save(study, file);
        assertEquals(List.of("fleet.amberyard", "fleet.amberyard~"), names());
        assertEquals("Renamed", StudyFile.load(file).getName());
        assertEquals(new String(first), Files.readString(folder.resolve("fleet.amberyard~")));
    }

    @Test
    void everyElementHasAnId() throws StudyFileException {
        StudyFile.save(study, file);
        StudyResource loaded = StudyFile.open(file);
        loaded.getAllContents().forEachRemaining(e -> assertTrue(loaded.getID(e).matches("[a-z-]+-\\d+"), e.toString()));
        assertEquals("month-climate-12", loaded.getID(((Study) loaded.getContents().get(0)).getSite().getClimate().get(11)));
    }

    @Test
    void idsAreTheSameEachTime() throws Exception {
        StudyFile.save(study, file);
        String first = Files.readString(file);
        StudyFile.save(study, file);
        assertEquals(first, Files.readString(file));
        StudyFile.save(StudyFile.load(file), file);
        assertEquals(first, Files.readString(file));
    }

    @Test
    void oneEditChangesOneLine() throws Exception {
        inResource();
        List<String> before = savedLines();
        small.am.setDistanceKm(31.25);
        List<String> after = savedLines();
        assertEquals(before.size(), after.size());
        List<String> changed = Stream.iterate(0, i -> i < after.size(), i -> i + 1)
                .filter(i -> !before.get(i).equals(after.get(i))).map(i -> after.get(i).strip()).toList();
        assertEquals(List.of("distanceKm=\"31.25\""), changed);
    }

    @Test
    void aNewElementTakesANewNumberAndOthersKeepTheirs() throws Exception {
        inResource();
        List<String> before = savedLines();
        study.getBuses().move(0, small.addBus("B00"));
        List<String> after = savedLines();
        assertTrue(after.stream().anyMatch(l -> l.contains("xmi:id=\"bus-2\"")));
        after.removeAll(before);
        assertTrue(after.stream().allMatch(l -> l.matches(".*(bus-2|B00).*")), after.toString());
    }

    @Test
    void aNumberIsNotGivenAgainAfterAHigherOne() throws Exception {
        StudyResource resource = inResource();
        small.addBus("B02");
        small.addBus("B03");
        StudyFile.save(study, file);
        study.getBuses().remove(1);
        StudyFile.save(study, file);
        assertEquals("bus-4", idAfterSaving(resource, "B04"));
    }

    private String idAfterSaving(StudyResource resource, String name) throws StudyFileException {
        var bus = small.addBus(name);
        StudyFile.save(study, file);
        return resource.getID(bus);
    }

    @Test
    void anElementThatIsTakenOutAndPutBackKeepsItsId() throws StudyFileException {
        StudyResource resource = inResource();
        StudyFile.save(study, file);
        String id = resource.getID(small.pm);
        small.route.getRuns().remove(small.pm);
        assertNull(resource.getID(small.pm));
        small.route.getRuns().add(0, small.pm);
        assertEquals(id, resource.getID(small.pm));
        assertSame(small.pm, resource.getEObject(id));
    }

    @Test
    void defaultsAreSpelledOut() throws Exception {
        StudyFile.save(study, file);
        assertTrue(Files.readString(file).contains("discountRate=\"0.045\""));
    }

    @Test
    void linesEndTheSameEverywhere() throws Exception {
        StudyFile.save(study, file);
        assertFalse(Files.readString(file).contains("\r"));
        assertTrue(Files.readString(file).startsWith("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<study:Study\n"));
    }

    @Test
    void aCopyIsAStudyOfItsOwnWithTheSameIds() {
        StudyResource resource = inResource();
        Study copy = StudyFile.copy(study);
        assertTrue(EcoreUtil.equals(study, copy));
        copy.setName("Other");
        assertEquals("New study", study.getName());
        assertEquals(resource.getID(small.bus), ((StudyResource) copy.eResource()).getID(copy.getBuses().get(0)));
    }

    @Test
    void aReferenceToElsewhereIsNotSaved() throws Exception {
        StudyFile.save(study, file);
        String before = Files.readString(file);
        small.am.setCalendar(new SmallStudy().school);
        assertEquals("“fleet.amberyard” cannot be saved: run AM of route R01 refers to service calendar School year, "
                + "which is not part of the study. Choose another or clear the field, then save again. "
                + "The file on disk is as it was.", refusal(file));
        assertEquals(before, Files.readString(file));
        assertEquals(List.of("fleet.amberyard"), names());
    }

    @Test
    void aCharacterThatXmlCannotHoldIsNotSaved() throws Exception {
        StudyFile.save(study, file);
        String before = Files.readString(file);
        study.setDescription("a\u0000b");
        assertTrue(refusal(file).startsWith("“fleet.amberyard” cannot be saved: "));
        assertEquals(before, Files.readString(file));
    }

    @Test
    void aFailureAfterWritingLeavesTheFileAsItWas() throws Exception {
        StudyFile.save(study, file);
        String before = Files.readString(file);
        // The name of the previous version is taken by a folder that cannot be replaced.
        Files.createDirectories(folder.resolve("fleet.amberyard~/full"));
        study.setName("Renamed");
        String message = refusal(file);
        assertTrue(message.endsWith("The file on disk is as it was. Save under another name or in another folder."), message);
        assertEquals(before, Files.readString(file));
        assertEquals(List.of("fleet.amberyard", "fleet.amberyard~"), names());
    }

    @Test
    void aCheckThatRefusesLeavesTheFileAsItWas() throws Exception {
        Files.writeString(file, "old");
        StudyFileException refused = new StudyFileException("refused");
        assertSame(refused, assertThrows(StudyFileException.class,
                () -> new AtomicFile(file, true).write("new".getBytes(), written -> {
                    assertTrue(Files.isRegularFile(written));
                    throw refused;
                })));
        assertEquals("old", Files.readString(file));
        assertEquals(List.of("fleet.amberyard"), names());
    }

    @Test
    void aMissingFolderIsNamed() {
        Path nowhere = folder.resolve("none/fleet.amberyard");
        assertEquals("“fleet.amberyard” cannot be saved: the folder “" + folder.resolve("none") + "” does not exist. "
                + "The file on disk is as it was. Save under another name or in another folder.", refusal(nowhere));
    }

    @Test
    void aFolderOfTheSameNameIsNotReplaced() throws IOException {
        Files.createDirectory(file);
        assertEquals("“" + file.toRealPath() + "” cannot be saved because a folder has that name. Choose another.",
                refusal(file));
    }

    @Test
    void aReadOnlyFolderIsNamed() throws Exception {
        Assumptions.assumeTrue(FileSystems.getDefault().supportedFileAttributeViews().contains("posix"));
        StudyFile.save(study, file);
        String before = Files.readString(file);
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("r-xr-xr-x"));
        try {
            // The superuser may write everywhere.
            Assumptions.assumeFalse(Files.isWritable(folder));
            assertEquals("“fleet.amberyard” cannot be saved: the folder “" + folder + "” cannot be written to. "
                    + "The file on disk is as it was. Save under another name or in another folder.", refusal(file));
            assertEquals(before, Files.readString(file));
        } finally {
            Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
        }
    }

    @Test
    void permissionsAndLinksSurvive() throws Exception {
        Assumptions.assumeTrue(FileSystems.getDefault().supportedFileAttributeViews().contains("posix"));
        StudyFile.save(study, file);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw-r--"));
        Path link = Files.createSymbolicLink(folder.resolve("link.amberyard"), file);
        study.setName("Renamed");
        StudyFile.save(study, link);
        assertTrue(Files.isSymbolicLink(link));
        assertEquals("Renamed", StudyFile.load(file).getName());
        assertEquals("rw-rw-r--", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
    }

    private StudyResource inResource() {
        StudyResource resource = new StudyResource(URI.createURI("memory.amberyard"));
        resource.getContents().add(study);
        return resource;
    }

    private List<String> savedLines() throws Exception {
        StudyFile.save(study, file);
        return new ArrayList<>(Files.readAllLines(file));
    }

    private String refusal(Path target) {
        return assertThrows(StudyFileException.class, () -> StudyFile.save(study, target)).getMessage();
    }

    private List<String> names() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(p -> p.getFileName().toString()).sorted().toList();
        }
    }
}
