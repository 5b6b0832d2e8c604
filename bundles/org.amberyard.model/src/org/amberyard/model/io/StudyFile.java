package org.amberyard.model.io;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.study.Study;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Study files on disk. */
public final class StudyFile {
    /** File name extension of a study, without the dot. */
    public static final String EXTENSION = "amberyard";
    /** Newest file format that this program reads, and the one that it writes. */
    public static final int FORMAT_VERSION = 1;
    /** Largest file that is read, in bytes. */
    public static final int MAX_BYTES = 64 * 1024 * 1024;

    private StudyFile() {
    }

    /**
     * The study in a file, in a resource of its own.
     *
     * @throws StudyFileException when the file is missing, damaged, too large or of a newer version; nothing is read then
     */
    public static Study load(Path file) throws StudyFileException {
        return (Study) open(file).getContents().get(0);
    }

    /**
     * The resource of a study file; its only root is the study.
     *
     * @throws StudyFileException as for {@link #load}
     */
    public static StudyResource open(Path file) throws StudyFileException {
        return StudyReader.read(file);
    }

    /**
     * Writes a study. The file on disk is either the previous one or the new one at any moment, and the new one has been
     * read back before it takes the place. The previous one is kept beside it with {@code ~} behind its name. The study
     * stays as it is; elements without an id get theirs in its {@link StudyResource}, if it is in one.
     *
     * @throws StudyFileException when it cannot be written; the file on disk is then as it was
     */
    public static void save(Study study, Path file) throws StudyFileException {
        new AtomicFile(file, true).write(bytes(study, file), written -> check(study, written));
    }

    /** A copy of a study in a resource of its own; elements keep their ids. */
    public static Study copy(Study study) {
        URI uri = study.eResource() == null ? URI.createURI("copy." + EXTENSION) : study.eResource().getURI();
        return (Study) StudyResource.copyOf(study, uri).getContents().get(0);
    }

    /**
     * A study as its file would hold it, for a file that holds more than a study.
     *
     * @param file that file, for messages
     * @throws StudyFileException when it cannot be written
     */
    public static byte[] bytes(Study study, Path file) throws StudyFileException {
        refuseOutsiders(study, file);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            StudyResource.copyOf(study, URI.createFileURI(file.toAbsolutePath().toString())).save(out, Map.of());
        } catch (IOException | RuntimeException e) {
            // The XML writer refuses some characters with an unchecked exception.
            throw new StudyFileException("“" + file.getFileName() + "” cannot be saved: " + e.getMessage()
                    + " The file on disk is as it was.", e);
        }
        return out.toByteArray();
    }

    /**
     * The study in {@link #bytes}.
     *
     * @param file the file that holds them among others, for messages
     * @throws StudyFileException as for {@link #load}
     */
    public static Study of(byte[] bytes, Path file) throws StudyFileException {
        return (Study) StudyReader.read(bytes, file).getContents().get(0);
    }

    private static void refuseOutsiders(Study study, Path file) throws StudyFileException {
        for (var outsider : EcoreUtil.ExternalCrossReferencer.find(study).entrySet()) {
            EObject holder = outsider.getValue().iterator().next().getEObject();
            throw new StudyFileException("“" + file.getFileName() + "” cannot be saved: "
                    + ElementNames.withKind(holder) + " refers to " + ElementNames.withKind(outsider.getKey())
                    + ", which is not part of the study. Choose another or clear the field, then save again. "
                    + "The file on disk is as it was.");
        }
    }

    static void check(Study study, Path written) throws StudyFileException {
        if (!EcoreUtil.equals(study, StudyReader.read(written).getContents().get(0))) {
            throw new StudyFileException("What was written does not read back as the same study. The file on disk is as "
                    + "it was. Save under another name, on another disk.");
        }
    }
}
