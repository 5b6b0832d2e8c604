package org.amberyard.report.papers;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
 * What is submitted, frozen: a folder of its own with the study, its inputs, the documents, the figures of the grant set, what was
 * frozen when and how, and the SHA-256 of every file. Its files can be read and not written; a later study is compared with it by {@link SubmissionChanges}.
 */
public final class Submission {
    static final String STUDY = "study." + StudyFile.EXTENSION;
    static final String INPUTS = "inputs.csv";
    static final String FIGURES = "figures.json";

    private Submission() {
    }

    /**
     * What was frozen.
     *
     * @param files the files in the order written
     * @param sum SHA-256 of the manifest, which tells later that nothing was touched
     */
    public record Frozen(List<Path> files, String sum) {
        public Frozen {
            files = List.copyOf(files);
        }

        /** The sum and what to do with it, in words. */
        public String words() {
            return SubmissionManifest.NAME + " has SHA-256 " + sum + "; keep this sum elsewhere, it proves that the submission is as it was frozen.";
        }
    }

    /**
     * Freezes a submission.
     *
     * @param study the study that the results are of
     * @param frozenOn day of freezing
     * @param folder new or empty
     * @param progress hears of it; nothing is left when it throws
     */
    public static Frozen freeze(PaperInput in, Study study, DocumentFolder.Wanted wanted, LocalDate frozenOn, Path folder,
            Progress progress) throws IOException {
        refuseUsed(folder);
        Map<String, byte[]> files = files(in, study, wanted, frozenOn, progress);
        byte[] manifest = SubmissionManifest.of(files).getBytes(StandardCharsets.UTF_8);
        files.put(SubmissionManifest.NAME, manifest);
        Files.createDirectories(folder);
        try (StagedFiles staged = new StagedFiles(folder)) {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                Files.write(staged.add(file.getKey()), file.getValue());
            }
            List<Path> written = staged.moveIntoPlace();
            written.forEach(f -> f.toFile().setReadOnly());
            return new Frozen(written, SubmissionManifest.sum(manifest));
        }
    }

    /** All files but the manifest; the one about the submission, which names the others, is the first. */
    private static Map<String, byte[]> files(PaperInput in, Study study, DocumentFolder.Wanted wanted, LocalDate frozenOn,
            Progress progress) throws IOException {
        Map<String, byte[]> others = new LinkedHashMap<>();
        others.put(STUDY, bytes(study));
        others.put(INPUTS, CsvTables.document(in.facts().inputs()).getBytes(StandardCharsets.UTF_8));
        others.put(FIGURES, DocumentFormat.JSON.write(figures(in)));
        DocumentFolder.make(in, wanted, progress, others::put);
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put(SubmissionAbout.NAME, SubmissionAbout.text(in, wanted, frozenOn, others.keySet()).getBytes(StandardCharsets.UTF_8));
        files.putAll(others);
        return files;
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
