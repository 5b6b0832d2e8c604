package org.amberyard.exchange;

import java.util.List;
import java.util.stream.Collectors;

/** An import that was refused as a whole; nothing of it has been taken over. */
public final class ImportException extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient List<ImportProblem> problems;

    /** Refuses an import for its problems. */
    public ImportException(List<ImportProblem> problems) {
        super(problems.stream().map(ImportProblem::toString).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    /** Every problem found, in the order of the files. */
    public List<ImportProblem> problems() {
        return problems;
    }
}
