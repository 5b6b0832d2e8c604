package org.amberyard.model.io;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.amberyard.model.study.Study;

/** The unsaved state of a study in a hidden file beside it, for when the program does not come to save it. */
public final class RecoveryFile {
    private static final String ENDING = ".recovery";

    private RecoveryFile() {
    }

    /** Where the unsaved state of a study file is kept: for {@code fleet.amberyard} it is {@code .fleet.amberyard.recovery}. */
    public static Path of(Path study) {
        return study.resolveSibling("." + study.getFileName() + ENDING);
    }

    /**
     * Keeps the state of a study; the study file itself is not touched.
     *
     * @throws StudyFileException when it cannot be written; an earlier state is then as it was
     */
    public static void write(Study study, Path file) throws StudyFileException {
        Path recovery = of(file);
        new AtomicFile(recovery, false).write(StudyFile.bytes(study, recovery), written -> StudyFile.check(study, written));
    }

    /** The recovery file of a study file when it is newer, or when the study file itself is missing. */
    public static Optional<Path> find(Path study) {
        Path recovery = of(study);
        try {
            boolean newer = Files.isRegularFile(recovery) && (!Files.exists(study)
                    || Files.getLastModifiedTime(recovery).compareTo(Files.getLastModifiedTime(study)) > 0);
            return newer ? Optional.of(recovery) : Optional.empty();
        } catch (IOException e) {
            // It vanished between the two questions, or may not be asked: there is nothing to offer.
            return Optional.empty();
        }
    }

    /**
     * Removes the recovery file of a study file, if there is one: after saving, or when the user declines it.
     *
     * @throws StudyFileException when it is there but cannot be removed
     */
    public static void discard(Path study) throws StudyFileException {
        try {
            Files.deleteIfExists(of(study));
        } catch (IOException e) {
            throw new StudyFileException("The recovery file “" + of(study) + "” cannot be removed. Remove it by hand.", e);
        }
    }
}
