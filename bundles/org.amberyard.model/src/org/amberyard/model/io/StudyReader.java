package org.amberyard.model.io;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.amberyard.model.study.Study;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.xmi.XMLResource;

/** Reads study files, or refuses them whole. */
final class StudyReader {
    private static final Map<String, Boolean> PARSER_FEATURES = Map.of(
            "http://apache.org/xml/features/disallow-doctype-decl", true,
            "http://xml.org/sax/features/external-general-entities", false,
            "http://xml.org/sax/features/external-parameter-entities", false);

    private final Path file;

    private StudyReader(Path file) {
        this.file = file;
    }

    static StudyResource read(Path file) throws StudyFileException {
        StudyReader reader = new StudyReader(file);
        return reader.parse(reader.bytes());
    }

    static StudyResource read(byte[] bytes, Path file) throws StudyFileException {
        return new StudyReader(file).parse(bytes);
    }

    private byte[] bytes() throws StudyFileException {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(StudyFile.MAX_BYTES + 1);
            if (bytes.length > StudyFile.MAX_BYTES) {
                throw refusal("it is larger than " + StudyFile.MAX_BYTES / (1024 * 1024)
                        + " MiB, the most that a study may have.", "Choose another file.", null);
            }
            return bytes;
        } catch (NoSuchFileException e) {
            throw refusal("there is no such file.", "Choose another file.", e);
        } catch (IOException e) {
            throw refusal("the system could not read it (" + e.getMessage() + ").",
                    "Check that it is a file that you may read.", e);
        }
    }

    private StudyResource parse(byte[] bytes) throws StudyFileException {
        FormatPeek.check(bytes, this);
        StudyResource resource = new StudyResource(URI.createFileURI(file.toAbsolutePath().toString()));
        try {
            resource.load(new ByteArrayInputStream(bytes), options());
        } catch (IOException | RuntimeException e) {
            // EMF reports what it does not know both ways.
            throw damaged(LoadProblems.describe(resource, e), e);
        }
        if (!resource.getErrors().isEmpty()) {
            throw damaged(LoadProblems.describe(resource, null), null);
        }
        checkContents(resource);
        return resource;
    }

    private static Map<Object, Object> options() {
        Map<Object, Object> options = new HashMap<>();
        options.put(XMLResource.OPTION_PARSER_FEATURES, PARSER_FEATURES);
        return options;
    }

    private void checkContents(StudyResource resource) throws StudyFileException {
        if (resource.getContents().size() != 1 || !(resource.getContents().get(0) instanceof Study)) {
            throw damaged("it must hold one study and nothing else.", null);
        }
        Optional<String> problem = Integrity.problem(resource);
        if (problem.isPresent()) {
            throw damaged(problem.get(), null);
        }
    }

    /** A refusal that a previous version of the file may help with. */
    StudyFileException damaged(String reason, Exception cause) {
        Path previous = AtomicFile.previous(file);
        return refusal(reason, Files.isRegularFile(previous)
                ? "The version before it is kept beside it as “" + previous.getFileName() + "”: open that one."
                : "Ask for the file again, or put it right in a text editor.", cause);
    }

    StudyFileException refusal(String reason, String remedy, Exception cause) {
        return new StudyFileException("“" + file.getFileName() + "” cannot be opened: " + reason + " " + remedy, cause);
    }
}
