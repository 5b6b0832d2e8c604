package org.amberyard.workbench.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two programs and one study: a second process that takes the lock, or asks for it, as another window of the program would. */
class StudyLockTest {
    /** Says whether it got the lock of a file, and keeps it until it is ended. */
    private static final String PROGRAM = """
            import java.nio.channels.FileChannel;
            import java.nio.file.Path;
            import java.nio.file.StandardOpenOption;

            class Program {
                public static void main(String[] file) throws Exception {
                    FileChannel channel = FileChannel.open(Path.of(file[0]), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                    System.out.write(channel.tryLock() == null ? 'n' : 'y');
                    System.out.flush();
                    Thread.sleep(600_000);
                }
            }
            """;

    @TempDir
    private Path folder;
    private Process other;

    private Path study() {
        return folder.resolve("fleet.amberyard");
    }

    /** @return true when the other program got the lock */
    private boolean otherTakes(Path study) throws IOException {
        Path source = Files.writeString(folder.resolve("Program.java"), PROGRAM);
        other = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), source.toString(),
                StudyLock.of(study).toString()).redirectError(ProcessBuilder.Redirect.INHERIT).start();
        int answer = other.getInputStream().read();
        assertTrue(answer == 'y' || answer == 'n', "the program did not get as far as asking: " + answer);
        return answer == 'y';
    }

    private void endOther() throws InterruptedException {
        other.destroyForcibly();
        assertTrue(other.waitFor(1, TimeUnit.MINUTES));
    }

    @AfterEach
    void end() {
        if (other != null) {
            other.destroyForcibly();
        }
    }

    /** However the other program ends, its lock ends with it; what it leaves behind takes nothing. */
    @Test
    void aStudyIsTakenAsLongAsAnotherProgramLives() throws Exception {
        assertFalse(StudyLock.isTaken(study()));
        assertTrue(otherTakes(study()));
        assertTrue(StudyLock.isTaken(study()));
        try (StudyLock second = StudyLock.take(study())) {
            assertTrue(second.isOthers());
        }
        assertTrue(Files.exists(StudyLock.of(study())), "that of the other stays");
        assertTrue(StudyLock.isTaken(study()), "asking does not free it");
        endOther();
        assertFalse(StudyLock.isTaken(study()));
        assertFalse(Files.exists(StudyLock.of(study())));
    }

    /** On many systems whoever closes a file loses all locks of the process on it; the lock outlasts being asked for by any name. */
    @Test
    void askingTwiceInOneProgramDoesNotLetAnotherIn() throws Exception {
        Path link = Files.createSymbolicLink(folder.resolve("link"), Files.createDirectory(folder.resolve("real")));
        Path study = folder.resolve("real").resolve("fleet.amberyard");
        try (StudyLock lock = StudyLock.take(study)) {
            assertFalse(lock.isOthers());
            assertTrue(StudyLock.isTaken(study));
            assertTrue(StudyLock.isTaken(link.resolve("fleet.amberyard")), "another name of the same folder");
            try (StudyLock second = StudyLock.take(study)) {
                assertTrue(second.isOthers());
            }
            assertFalse(otherTakes(study), "the first still has it");
        }
        assertFalse(StudyLock.isTaken(study));
    }

    /** Two names of one lock file, as links or drives that do not tell capitals make them. */
    @Test
    void askingByAnotherNameOfTheSameFileDoesNotLetAnotherIn() throws Exception {
        Path link = folder.resolve("linked.amberyard");
        try (StudyLock lock = StudyLock.take(study())) {
            assertFalse(lock.isOthers());
            Files.createLink(StudyLock.of(link), StudyLock.of(study()));
            assertTrue(StudyLock.isTaken(link));
            assertFalse(otherTakes(study()), "the first still has it");
        }
        endOther();
        assertFalse(StudyLock.isTaken(link));
    }

    @Test
    void aStudyThatIsClosedIsFreeForTheNext() throws Exception {
        StudyLock.take(study()).close();
        assertFalse(Files.exists(StudyLock.of(study())));
        try (StudyLock again = StudyLock.take(study())) {
            assertFalse(again.isOthers());
            again.close();
        }
        assertTrue(otherTakes(study()));
    }

    /** What cannot be locked can be opened all the same. */
    @Test
    void withoutAFolderNothingIsTaken() {
        Path nowhere = folder.resolve("nowhere").resolve("fleet.amberyard");
        assertFalse(StudyLock.isTaken(nowhere));
        try (StudyLock none = StudyLock.take(null)) {
            assertFalse(none.isOthers());
        }
        assertEquals(folder.resolve(".fleet.amberyard.lock"), StudyLock.of(study()));
    }
}
