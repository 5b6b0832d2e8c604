package org.amberyard.batch;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import org.amberyard.report.papers.SubmissionChanges;

/** Tells how a study differs from a frozen submission. */
final class CompareFrozenVerb implements Verb {
    private static final String FROZEN = "--frozen";
    private static final String SUM = "--sum";

    @Override
    public String name() {
        return "compare-frozen";
    }

    @Override
    public String usage() {
        return "compare-frozen STUDY --frozen DIR [--sum SHA256]";
    }

    @Override
    public String summary() {
        return "tells which inputs and printed figures of STUDY differ from the submission frozen in DIR, and whether its files, or its "
                + "manifest with the sum printed at freezing, were touched";
    }

    @Override
    public Set<String> options() {
        return Set.of(FROZEN, SUM);
    }

    @Override
    public int run(Arguments arguments, Console console) throws WrongUse, IOException {
        Path file = arguments.study(console.folder());
        Path folder = arguments.path(FROZEN, console.folder());
        Optional<String> sum = sum(arguments);
        Optional<EvaluatedStudy> evaluated = EvaluatedStudy.of(file, console);
        if (evaluated.isEmpty()) {
            return ExitCode.WRONG_USE;
        }
        try {
            SubmissionChanges changes = SubmissionChanges.of(folder, evaluated.get().study(), evaluated.get().result(), sum);
            changes.lines().forEach(console.out()::println);
            return changes.isEmpty() ? ExitCode.DONE : ExitCode.DIFFERS;
        } catch (FileSystemException e) {
            throw new WrongUse(FROZEN + " is " + folder + "; " + (e.getReason() == null ? e.getFile() + " cannot be read"
                    : e.getReason()) + ".");
        }
    }

    private static Optional<String> sum(Arguments arguments) throws WrongUse {
        Optional<String> sum = arguments.value(SUM).map(String::strip);
        if (sum.isPresent() && !SubmissionChanges.isSum(sum.get())) {
            throw new WrongUse(SUM + " is “" + sum.get() + "”; it must be a SHA-256 of 64 hexadecimal digits.");
        }
        return sum;
    }
}
