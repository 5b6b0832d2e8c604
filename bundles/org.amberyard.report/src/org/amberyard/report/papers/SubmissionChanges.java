package org.amberyard.report.papers;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.study.Study;
import org.amberyard.report.InputRegister;
import org.amberyard.report.ResultTable;
import org.amberyard.report.document.DocumentFormat;

/**
 * How a study differs from a submission.
 *
 * @param broken what is no longer as it was frozen: files changed, missing, added, or not listed
 * @param inputs inputs that are others, came or went
 * @param figures printed figures of the grant set that are others, came or went; empty where the plan is gone
 * @param sum what there is to say of the manifest's own sum
 */
public record SubmissionChanges(List<String> broken, List<String> inputs, List<String> figures, String sum) {
    private static final int SHOWN = 200;

    /**
     * Compares a study with a submission.
     *
     * @param result results of the study
     * @param expected SHA-256 of the manifest that was printed at freezing, if it is known
     * @throws IOException when the folder is no submission, or cannot be read; its message says which file
     */
    public static SubmissionChanges of(Path folder, Study study, StudyResult result, Optional<String> expected) throws IOException {
        if (!Files.isRegularFile(folder.resolve(SubmissionManifest.NAME))) {
            throw new NoSuchFileException(folder.toString(), null, "there is no " + SubmissionManifest.NAME
                    + ": it is no folder of a frozen submission");
        }
        return new SubmissionChanges(SubmissionCheck.of(folder, expected), read(() -> inputs(folder, study)),
                read(() -> figures(folder, study, result)), SubmissionManifest.NAME + " has SHA-256 "
                        + SubmissionManifest.read(folder).sum()
                        + (expected.isEmpty() ? "; it must be the sum that was printed at freezing: whether documents were exchanged together with the "
                                + "manifest cannot be told without its sum."
                                : ", compared with the sum given."));
    }

    /** True for the digits of a SHA-256. */
    public static boolean isSum(String text) {
        return text.matches("[0-9A-Fa-f]{64}");
    }

    /** Reads something of a frozen folder. */
    private interface Reading {
        List<String> lines() throws IOException;
    }

    /** What was frozen may be damaged in any way; that it cannot be read must not hide which files are broken. */
    private static List<String> read(Reading reading) {
        try {
            return reading.lines();
        } catch (IOException | RuntimeException e) {
            return List.of("cannot be compared, because what was frozen cannot be read: " + e.getMessage());
        }
    }

    /** True when nothing is different from what was frozen. */
    public boolean isEmpty() {
        return broken.isEmpty() && inputs.isEmpty() && figures.isEmpty();
    }

    /** All of it in lines, most important first. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        if (isEmpty()) {
            lines.add("The study and all its figures are those of the submission.");
        }
        add(lines, "What is not as it was frozen", broken);
        add(lines, "Inputs that differ, as frozen and now", inputs);
        add(lines, "Figures of the justification tables that differ, as frozen and now", figures);
        lines.add(sum);
        return lines;
    }

    private static void add(List<String> lines, String title, List<String> of) {
        if (!of.isEmpty()) {
            lines.add(title + ": " + of.size());
            of.stream().limit(SHOWN).forEach(l -> lines.add("  " + l));
            if (of.size() > SHOWN) {
                lines.add("  … and " + (of.size() - SHOWN) + " more");
            }
        }
    }

    private static List<String> inputs(Path folder, Study study) throws IOException {
        try {
            return NamedValues.different(inputs(StudyFile.load(folder.resolve(Submission.STUDY))), inputs(study));
        } catch (StudyFileException e) {
            throw new IOException(e.getMessage(), e);
        }
    }

    private static NamedValues inputs(Study study) {
        ResultTable register = InputRegister.of(study);
        NamedValues values = new NamedValues();
        NarrativeFacts.of(study).forEach(n -> values.put("narrative " + n.heading() + ", text", n.text()));
        for (ResultLine line : ResultLine.all(register, "")) {
            String value = line.number("value").isPresent() ? InputFigure.of(line.number("value").getAsDouble()).toPlainString()
                    : line.text("value");
            values.put(line.text("element") + ", " + line.text("field"), (value + " " + line.text("unit")).strip());
        }
        return values;
    }

    private static List<String> figures(Path folder, Study study, StudyResult result) throws IOException {
        SubmissionAbout about = SubmissionAbout.of(folder);
        String plan = about.plan();
        List<String> names = result.plans().stream().map(p -> SubmissionAbout.oneLine(p.name())).toList();
        if (!names.contains(plan)) {
            return List.of("The plan “" + plan + "” is gone; there are " + String.join(", ", names) + ".");
        }
        PaperChoices choices = new PaperChoices(PaperChoices.STANDARD.tables(), about.programme(), false,
                Optional.empty());
        PaperInput in = new PaperInput(result, names.indexOf(plan), StudyFacts.of(study), choices);
        String now = new String(DocumentFormat.JSON.write(Submission.figures(in)), StandardCharsets.UTF_8);
        return TableChanges.of(FrozenFigures.of(Files.readString(folder.resolve(Submission.FIGURES), StandardCharsets.UTF_8)),
                FrozenFigures.of(now));
    }
}
