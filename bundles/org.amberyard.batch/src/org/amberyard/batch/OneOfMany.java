package org.amberyard.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.StudyEvaluator;
import org.amberyard.study.StudyFindings;
import org.amberyard.study.whatif.StudyFingerprint;

/**
 * What became of one of many studies.
 *
 * @param rows where its rows are; empty when it could not be evaluated
 * @param words what was done, or why it could not be
 */
record OneOfMany(Optional<Path> rows, String words) {
    private static final int MOST_REASONS = 3;

    /** Evaluates a study unless its rows are there already; a fault in one is told and does not end the others. */
    static OneOfMany of(Path file, String name, StudyRows rows) throws IOException {
        try {
            Study study = StudyArgument.load(file);
            Path kept = rows.of(name, StudyFingerprint.of(study));
            if (Files.exists(kept)) {
                return new OneOfMany(Optional.of(kept), "kept from before");
            }
            List<Finding> findings = StudyFindings.of(study);
            if (!StudyFindings.canEvaluate(findings)) {
                return new OneOfMany(Optional.empty(), "cannot be evaluated: " + reasons(findings));
            }
            rows.write(name, kept, new StudyEvaluator().evaluate(StudyCompiler.compile(study)));
            return new OneOfMany(Optional.of(kept), "evaluated");
        } catch (WrongUse e) {
            return new OneOfMany(Optional.empty(), "cannot be read: " + e.getMessage());
        } catch (RuntimeException e) {
            return new OneOfMany(Optional.empty(), "fault in the program: " + (e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage()));
        }
    }

    private static String reasons(List<Finding> findings) {
        List<String> errors = findings.stream().filter(f -> f.severity() == Severity.ERROR).map(Finding::message).toList();
        return errors.stream().limit(MOST_REASONS).collect(Collectors.joining(" "))
                + (errors.size() > MOST_REASONS ? " And " + (errors.size() - MOST_REASONS) + " more." : "");
    }
}
