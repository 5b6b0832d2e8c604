package org.amberyard.model.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

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
        RecoveryFile.write(small.study, file);
        small.study.setName("Unsaved, later");
        RecoveryFile.write(small.study, file);
        assertEquals("New study", StudyFile.load(file).getName());
        assertEquals("Unsaved, later", StudyFile.load(RecoveryFile.find(file).orElseThrow()).getName());
        assertFalse(Files.exists(folder.resolve(".fleet.amberyard.recovery~")));
    }

    @Test
    void itIsOfferedWhenNewerOnly() throws Exception {
        RecoveryFile.write(small.study, file);
        Files.setLastModifiedTime(RecoveryFile.of(file), FileTime.fromMillis(1_000_000));
        assertEquals(Optional.empty(), RecoveryFile.find(file));
        Files.delete(file);
        assertEquals(Optional.of(RecoveryFile.of(file)), RecoveryFile.find(file));
    }

    @Test
    void itCanBeDiscardedTwice() throws Exception {
        RecoveryFile.write(small.study, file);
        RecoveryFile.discard(file);
        RecoveryFile.discard(file);
        assertEquals(Optional.empty(), RecoveryFile.find(file));
    }
}
