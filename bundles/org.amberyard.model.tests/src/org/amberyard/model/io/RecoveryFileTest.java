package org.amberyard.model.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Optional;
import org.amberyard.model.SmallStudy;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecoveryFileTest {
    private final SmallStudy small = new SmallStudy();
    @TempDir
    private Path folder;
    private Path file;

    @BeforeEach
    void save() throws Exception {
        file = folder.resolve("fleet.amberyard");
        StudyFile.save(small.study, file);
        Files.setLastModifiedTime(file, FileTime.fromMillis(1_000_000));
    }

    @Test
    void itIsAHiddenSibling() {
        assertEquals(folder.resolve(".fleet.amberyard.recovery"), RecoveryFile.of(file));
        assertEquals(Optional.empty(), RecoveryFile.find(file));
    }

    @Test
    void itHoldsTheUnsavedStateAndLeavesTheStudyFile() throws Exception {
        small.study.setName("Unsaved");
        keep();
        small.study.setName("Unsaved, later");
        keep();
        assertEquals("New study", StudyFile.load(file).getName());
        assertEquals("Unsaved, later", StudyFile.load(RecoveryFile.find(file).orElseThrow()).getName());
        assertFalse(Files.exists(folder.resolve(".fleet.amberyard.recovery~")));
    }

    /** The clock was put back between saving and editing. */
    @Test
    void changesOfTheFileAsItIsAreOfferedWhateverTheClockSays() throws Exception {
        keep();
        Files.setLastModifiedTime(RecoveryFile.of(file), FileTime.fromMillis(1_000));
        assertEquals(Optional.of(RecoveryFile.of(file)), RecoveryFile.find(file));
        assertEquals(Optional.of(FileSum.of(file)), RecoveryFile.changedVersion(file));
    }

    /** The program was killed when it had saved and not yet removed what it had kept. */
    @Test
    void changesOfAnEarlierVersionAreOfferedWhenNewerOnly() throws Exception {
        small.study.setName("Unsaved");
        keep();
        StudyFile.save(small.study, file);
        Files.setLastModifiedTime(file, FileTime.fromMillis(1_000_000));
        Files.setLastModifiedTime(RecoveryFile.of(file), FileTime.fromMillis(1_000_000));
        assertEquals(Optional.empty(), RecoveryFile.find(file));
        Files.setLastModifiedTime(RecoveryFile.of(file), FileTime.fromMillis(1_000_001));
        assertEquals(Optional.of(RecoveryFile.of(file)), RecoveryFile.find(file));
        assertNotEquals(Optional.of(FileSum.of(file)), RecoveryFile.changedVersion(file));
    }

    @Test
    void whatIsKeptOfAMissingFileIsOffered() throws Exception {
        keep();
        Files.delete(file);
        assertEquals(Optional.of(RecoveryFile.of(file)), RecoveryFile.find(file));
        keep();
        assertEquals(Optional.empty(), RecoveryFile.changedVersion(file));
    }

    /** An earlier version of the program kept the study and nothing else. */
    @Test
    void withoutAVersionTimeDecides() throws Exception {
        RecoveryFile.write(small.study, file, FileSum.NONE);
        Files.setLastModifiedTime(RecoveryFile.of(file), FileTime.fromMillis(1_000_000));
        assertEquals(Optional.empty(), RecoveryFile.find(file));
        Files.setLastModifiedTime(RecoveryFile.of(file), FileTime.fromMillis(1_000_001));
        assertEquals(Optional.of(RecoveryFile.of(file)), RecoveryFile.find(file));
    }

    @Test
    void itCanBeDiscardedTwice() throws Exception {
        keep();
        RecoveryFile.discard(file);
        RecoveryFile.discard(file);
        assertEquals(Optional.empty(), RecoveryFile.find(file));
    }

    private void keep() throws StudyFileException {
        RecoveryFile.write(small.study, file, FileSum.of(file));
    }
}
