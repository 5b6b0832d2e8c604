package org.amberyard.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.amberyard.model.io.FileSum;
import org.amberyard.model.io.RecoveryFile;
import org.amberyard.model.io.StudyDefaults;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.study.Study;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Saves where there is no room: a program that may write files of a few kilobytes only stands in for a full disk. */
@EnabledOnOs(OS.LINUX)
class FullDiskTest {
    private static final int BLOCKS = 64;
    private static final int LETTERS = 200_000;

    @TempDir
    private Path folder;

    /** A program that makes a study larger than it may write, and says what came of saving it and its recovery file. */
    static final class Saving {
        private Saving() {
        }

        /** @param args the study file */
        public static void main(String[] args) throws StudyFileException {
            Path file = Path.of(args[0]);
            Study study = StudyFile.load(file);
            study.setDescription("much ".repeat(LETTERS));
            say(() -> StudyFile.save(study, file));
            say(() -> RecoveryFile.write(study, file, FileSum.of(file)));
        }

        private interface Work {
            void run() throws StudyFileException;
        }

        private static void say(Work work) {
            try {
                work.run();
                System.out.println("done");
            } catch (StudyFileException refused) {
                System.out.println(refused.getMessage());
            }
        }
    }

    @Test
    void aStudyForWhichThereIsNoRoomStaysAsItWas() throws Exception {
        Path file = folder.resolve("fleet.amberyard");
        StudyFile.save(StudyDefaults.create(), file);
        byte[] before = Files.readAllBytes(file);

        List<String> said = savingWithin(BLOCKS, file);

        assertEquals(2, said.size(), said::toString);
        for (String message : said) {
            assertTrue(message.contains("fleet.amberyard") && message.contains("cannot be saved: the system reports “File too large”"), message);
            assertTrue(message.contains("The file on disk is as it was."), message);
        }
        assertEquals(new String(before, StandardCharsets.UTF_8), Files.readString(file));
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(List.of(file), left.toList());
        }
    }

    private static List<String> savingWithin(int blocks, Path file) throws IOException, InterruptedException {
        Process program = new ProcessBuilder("sh", "-c", "ulimit -f " + blocks + "; exec \"$@\"", "sh",
                Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:-UsePerfData", "-XX:TieredStopAtLevel=1",
                "-Dstdout.encoding=UTF-8", "-Dfile.encoding=UTF-8", "-cp", System.getProperty("java.class.path"),
                Saving.class.getName(), file.toString()).redirectError(ProcessBuilder.Redirect.INHERIT).start();
        List<String> said = new String(program.getInputStream().readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        program.waitFor();
        return said;
    }
}
