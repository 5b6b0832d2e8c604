package org.amberyard.fuzz;

import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
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
 * the other, so is what would be recovered, and no edit is lost that had been kept. {@code -Dkills=100} kills more often.
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
        study.setDescription(SavingLoop.text(0));
        StudyFile.save(study, file);
        Random times = new Random(7);
        int last = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            int kept = keptWhenKilled(file, last, times.nextInt(LONGEST_MS));
            assertWhole(StudyFile.load(file));
            last = assertWhole(StudyFile.load(RecoveryFile.find(file).orElse(file)));
            assertTrue(last == kept || last == kept + 1, "edit " + kept + " was kept, edit " + last + " came back");
        }
    }

    /** The number of the edit that the study is of. */
    private static int assertWhole(Study study) {
        int edit = SavingLoop.edit(study.getDescription());
        Study fresh = StudyDefaults.create();
        fresh.setDescription(SavingLoop.text(edit));
        assertTrue(EcoreUtil.equals(fresh, study), study.getDescription());
        return edit;
    }

    /** The last edit of which the program has said that it is kept. */
    private static int keptWhenKilled(Path file, int before, int afterMs) throws IOException, InterruptedException {
        Process program = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1", "-cp", System.getProperty("java.class.path"), SavingLoop.class.getName(), file.toString(),
                String.valueOf(before)).redirectError(ProcessBuilder.Redirect.INHERIT).start();
        try (BufferedReader said = program.inputReader(StandardCharsets.US_ASCII)) {
            String first = said.readLine();
            assertNotNull(first, "the program did not get as far as keeping an edit");
            Thread.sleep(afterMs);
            // By its handle, which leaves what the program has said to be read.
            program.toHandle().destroyForcibly();
            assertTrue(program.waitFor(1, TimeUnit.MINUTES));
            return said.lines().reduce(first, (earlier, later) -> later).transform(Integer::parseInt);
        }
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
