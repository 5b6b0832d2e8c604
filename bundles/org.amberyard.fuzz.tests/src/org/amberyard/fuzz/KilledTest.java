package org.amberyard.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.amberyard.model.io.RecoveryFile;
import org.amberyard.model.io.StudyDefaults;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Kills a program that edits and saves a study, at times of its choosing: the study can always be opened and is one version or
 * the other, and so is what would be recovered. {@code -Dkills=100} kills more often.
 */
class KilledTest {
    private static final int KILLS = Integer.getInteger("kills", 5);
    private static final int LONGEST_MS = 60;

    @TempDir
    private Path folder;

    @Test
    void aStudyIsWholeWheneverItsProgramIsKilled() throws Exception {
        Path file = folder.resolve("fleet.amberyard");
        Study study = StudyDefaults.create();
        study.setDescription(SavingLoop.TEXTS[0]);
        StudyFile.save(study, file);
        Random times = new Random(7);
        for (int kill = 0; kill < KILLS; kill++) {
            killWhileSaving(file, times.nextInt(LONGEST_MS));
            assertWhole(StudyFile.load(file));
            if (Files.exists(RecoveryFile.of(file))) {
                assertWhole(StudyFile.load(RecoveryFile.of(file)));
            }
        }
    }

    private static void assertWhole(Study study) {
        assertTrue(List.of(SavingLoop.TEXTS).contains(study.getDescription()), study.getDescription());
        Study fresh = StudyDefaults.create();
        fresh.setDescription(study.getDescription());
        assertTrue(EcoreUtil.equals(fresh, study));
    }

    private static void killWhileSaving(Path file, int afterMs) throws IOException, InterruptedException {
        Process program = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1", "-cp", System.getProperty("java.class.path"), SavingLoop.class.getName(), file.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT).start();
        assertEquals('s', program.getInputStream().read(), "the program did not get as far as saving");
        Thread.sleep(afterMs);
        program.destroyForcibly();
        assertTrue(program.waitFor(1, TimeUnit.MINUTES));
    }

    /** A program that is killed in between leaves its half of a file under a name of its own; the next save is not held up by it. */
    @Test
    void leftoversDoNotHoldUpTheNextSave() throws IOException, StudyFileException {
        Path file = folder.resolve("fleet.amberyard");
        Files.writeString(folder.resolve(".fleet.amberyard.8a1b.tmp"), "<?xml version=\"1.0\"");
        StudyFile.save(StudyDefaults.create(), file);
        StudyFile.load(file);
        assertTrue(RecoveryFile.find(file).isEmpty());
    }
}
