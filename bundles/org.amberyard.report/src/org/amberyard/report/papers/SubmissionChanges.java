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
 * @param broken files of the submission that are no longer as they were frozen
 * @param inputs inputs that are others, came or went
 * @param figures printed figures of the grant set that are others, came or went; empty where the plan is gone
 */
public record SubmissionChanges(List<String> broken, List<String> inputs, List<String> figures) {
    private static final int SHOWN = 200;

    /**
     * Compares a study with a submission.
     *
     * @param result results of the study
     * @throws IOException when the folder is no submission, or cannot be read; its message says which file
     */
    public static SubmissionChanges of(Path folder, Study study, StudyResult result) throws IOException {
        if (!Files.isRegularFile(folder.resolve(SubmissionManifest.NAME))) {
            throw new NoSuchFileException(folder.toString(), null, "there is no " + SubmissionManifest.NAME
                    + ": it is no folder of a frozen submission");
        }
        return new SubmissionChanges(SubmissionManifest.broken(folder), read(() -> inputs(folder, study)),
                read(() -> figures(folder, study, result)));
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

    /** True when nothing is different. */
    public boolean isEmpty() {
        return broken.isEmpty() && inputs.isEmpty() && figures.isEmpty();
    }

    /** All of it in lines, most important first. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        if (isEmpty()) {
            lines.add("The study and all its figures are those of the submission.");
        }
        add(lines, "Files that are not as they were frozen", broken);
        add(lines, "Inputs that differ, as frozen and now", inputs);
        add(lines, "Figures of the justification tables that differ, as frozen and now", figures);
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
        for (ResultLine line : ResultLine.all(register, "")) {
            String value = line.number("value").isPresent() ? InputFigure.of(line.number("value").getAsDouble()).toPlainString()
                    : line.text("value");
            values.put(line.text("element") + ", " + line.text("field"), (value + " " + line.text("unit")).strip());
        }
        return values;
    }

    private static List<String> figures(Path folder, Study study, StudyResult result) throws IOException {
        List<String> about = Files.readAllLines(folder.resolve(Submission.ABOUT), StandardCharsets.UTF_8);
        String plan = named(about, Submission.PLAN).orElse("");
        List<String> names = result.plans().stream().map(p -> p.name()).toList();
        if (!names.contains(plan)) {
            return List.of("The plan “" + plan + "” is gone; there are " + String.join(", ", names) + ".");
        }
        PaperChoices choices = new PaperChoices(PaperChoices.STANDARD.tables(), named(about, Submission.PROGRAMME), false,
                Optional.empty());
        PaperInput in = new PaperInput(result, names.indexOf(plan), StudyFacts.of(study), choices);
        String now = new String(DocumentFormat.JSON.write(Submission.figures(in)), StandardCharsets.UTF_8);
        return TableChanges.of(FrozenFigures.of(Files.readString(folder.resolve(Submission.FIGURES), StandardCharsets.UTF_8)),
                FrozenFigures.of(now));
    }

    private static Optional<String> named(List<String> about, String label) {
        return about.stream().filter(l -> l.startsWith(label)).map(l -> l.substring(label.length())).findFirst();
    }
}
