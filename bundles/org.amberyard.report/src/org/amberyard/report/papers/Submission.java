package org.amberyard.report.papers;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.amberyard.core.progress.Progress;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.study.Study;
import org.amberyard.report.CsvTables;
import org.amberyard.report.StagedFiles;
import org.amberyard.report.document.Document;
import org.amberyard.report.document.DocumentFormat;

/**
 * What is submitted, frozen: a folder of its own with the study, its inputs, the documents, the figures of the grant set, and the
 * SHA-256 of every file. Its files can be read and not written; a later study is compared with it by {@link SubmissionChanges}.
 */
public final class Submission {
    static final String STUDY = "study." + StudyFile.EXTENSION;
    static final String INPUTS = "inputs.csv";
    static final String FIGURES = "figures.json";
    static final String ABOUT = "about.txt";
    static final String PLAN = "Plan: ";
    static final String PROGRAMME = "Applied to: ";

    private Submission() {
    }

    /**
     * Freezes a submission.
     *
     * @param study the study that the results are of
     * @param folder new or empty
     * @param progress hears of it; nothing is left when it throws
     * @return the files in the order written
     */
    public static List<Path> freeze(PaperInput in, Study study, DocumentFolder.Wanted wanted, Path folder, Progress progress)
            throws IOException {
        refuseUsed(folder);
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put(ABOUT, about(in).getBytes(StandardCharsets.UTF_8));
        files.put(STUDY, bytes(study));
        files.put(INPUTS, CsvTables.document(in.facts().inputs()).getBytes(StandardCharsets.UTF_8));
        files.put(FIGURES, DocumentFormat.JSON.write(figures(in)));
        DocumentFolder.make(in, wanted, progress, files::put);
        files.put(SubmissionManifest.NAME, SubmissionManifest.of(files).getBytes(StandardCharsets.UTF_8));
        Files.createDirectories(folder);
        try (StagedFiles staged = new StagedFiles(folder)) {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                Files.write(staged.add(file.getKey()), file.getValue());
            }
            List<Path> written = new ArrayList<>(staged.moveIntoPlace());
            written.forEach(f -> f.toFile().setReadOnly());
            return written;
        }
    }

    private static void refuseUsed(Path folder) throws IOException {
        if (Files.isDirectory(folder)) {
            try (Stream<Path> there = Files.list(folder)) {
                if (there.findAny().isPresent()) {
                    throw new FileAlreadyExistsException(folder.toString(), null,
                            "a submission is frozen into a folder of its own, new or empty");
                }
            }
        }
    }

    /** The whole grant set, whatever tables were chosen for paper. */
    static Document figures(PaperInput in) {
        return GrantSet.of(new PaperInput(in.result(), in.planIndex(), in.facts(), new PaperChoices(PaperChoices.STANDARD.tables(),
                in.choices().programme(), false, in.choices().dated())));
    }

    private static String about(PaperInput in) {
        StringBuilder text = new StringBuilder(PLAN + in.plan().name() + "\n");
        Optional<String> programme = ProjectMoney.of(in).programme();
        programme.ifPresent(p -> text.append(PROGRAMME).append(p).append("\n"));
        in.documentFacts().stream().filter(f -> !f.label().equals("Plan")).forEach(f -> text.append(f.label()).append(": ")
                .append(f.value()).append("\n"));
        return text.toString();
    }

    private static byte[] bytes(Study study) throws IOException {
        Path folder = Files.createTempDirectory("amberyard-submission");
        Path file = folder.resolve(STUDY);
        try {
            StudyFile.save(study, file);
            return Files.readAllBytes(file);
        } catch (StudyFileException e) {
            throw new IOException(e.getMessage(), e);
        } finally {
            Files.deleteIfExists(file);
            Files.delete(folder);
        }
    }
}
