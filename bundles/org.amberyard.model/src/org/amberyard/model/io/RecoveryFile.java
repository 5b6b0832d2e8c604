package org.amberyard.model.io;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.amberyard.model.study.Study;

/**
 * The unsaved state of a study in a hidden file beside it, for when the program does not come to save it. Behind the study it
 * says of which version of the study file these are the changes, so that they are found again whatever the clock does.
 */
public final class RecoveryFile {
    private static final String ENDING = ".recovery";
    private static final Pattern CHANGES_OF = Pattern.compile("<!-- changes of the file with SHA-256 ([0-9a-f]{64}) -->\\s*$");
    /** More bytes than what stands behind the study. */
    private static final int TAIL_BYTES = 200;

    private RecoveryFile() {
    }

    /** Where the unsaved state of a study file is kept: for {@code fleet.amberyard} it is {@code .fleet.amberyard.recovery}. */
    public static Path of(Path study) {
        return study.resolveSibling("." + study.getFileName() + ENDING);
    }

    /**
     * Keeps the state of a study; the study file itself is not touched.
     *
     * @param changed the version of the study file that was changed; {@link FileSum#NONE} for a study without a file
     * @throws StudyFileException when it cannot be written; an earlier state is then as it was
     */
    public static void write(Study study, Path file, FileSum changed) throws StudyFileException {
        Path recovery = of(file);
        ByteArrayOutputStream content = new ByteArrayOutputStream();
        content.writeBytes(StudyFile.bytes(study, recovery));
        if (changed.isKnown()) {
            content.writeBytes(("<!-- changes of the file with SHA-256 " + changed.sha256() + " -->\n").getBytes(StandardCharsets.US_ASCII));
        }
        new AtomicFile(recovery, false).write(content.toByteArray(), written -> StudyFile.check(study, written));
    }

    /**
     * The recovery file of a study file when the study file is missing or is still the version that was changed. Where it is
     * another, time decides: either it was saved after these changes, or someone else has replaced it before.
     */
    public static Optional<Path> find(Path study) {
        Path recovery = of(study);
        try {
            boolean offered = Files.isRegularFile(recovery) && (!Files.exists(study)
                    || changedVersion(study).equals(Optional.of(FileSum.of(study)))
                    || Files.getLastModifiedTime(recovery).compareTo(Files.getLastModifiedTime(study)) > 0);
            return offered ? Optional.of(recovery) : Optional.empty();
        } catch (IOException e) {
            // It vanished between the two questions, or may not be asked: there is nothing to offer.
            return Optional.empty();
        }
    }

    /** The version of a study file of which its recovery file holds changes; empty where there is none, or it does not say. */
    public static Optional<FileSum> changedVersion(Path study) {
        try {
            byte[] content = Files.readAllBytes(of(study));
            int from = Math.max(0, content.length - TAIL_BYTES);
            Matcher said = CHANGES_OF.matcher(new String(content, from, content.length - from, StandardCharsets.ISO_8859_1));
            return said.find() ? Optional.of(new FileSum(said.group(1))) : Optional.empty();
        } catch (IOException e) {
            // There is none, or it may not be read.
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
