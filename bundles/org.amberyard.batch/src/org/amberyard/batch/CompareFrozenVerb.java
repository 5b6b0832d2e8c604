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

    @Override
    public String name() {
        return "compare-frozen";
    }

    @Override
    public String usage() {
        return "compare-frozen STUDY --frozen DIR";
    }

    @Override
    public String summary() {
        return "tells which inputs and printed figures of STUDY differ from the submission frozen in DIR, and whether its files were touched";
    }

    @Override
    public Set<String> options() {
        return Set.of(FROZEN);
    }

    @Override
    public int run(Arguments arguments, Console console) throws WrongUse, IOException {
        Path file = arguments.study(console.folder());
        Path folder = arguments.path(FROZEN, console.folder());
        Optional<EvaluatedStudy> evaluated = EvaluatedStudy.of(file, console);
        if (evaluated.isEmpty()) {
            return ExitCode.WRONG_USE;
        }
        try {
            SubmissionChanges.of(folder, evaluated.get().study(), evaluated.get().result()).lines().forEach(console.out()::println);
            return ExitCode.DONE;
        } catch (FileSystemException e) {
            throw new WrongUse(FROZEN + " is " + folder + "; " + (e.getReason() == null ? e.getFile() + " cannot be read"
                    : e.getReason()) + ".");
        }
    }
}
