package org.amberyard.exchange;

import java.util.ArrayList;
import java.util.List;

/** Collects the problems of one file; after many it counts on without keeping them, for nobody reads a thousand. */
final class ProblemList {
    private static final int MOST_LISTED = 50;

    private final String file;
    private final List<ImportProblem> problems = new ArrayList<>();
    private int more;

    ProblemList(String file) {
        this.file = file;
    }

    void add(int row, String column, String message) {
        if (problems.size() < MOST_LISTED) {
            problems.add(new ImportProblem(file, row, column, message));
        } else {
            more++;
        }
    }

    boolean isEmpty() {
        return problems.isEmpty();
    }

    /** @throws ImportException when there are any */
    void refuseIfAny() throws ImportException {
        if (more > 0) {
            problems.add(new ImportProblem(file, 0, "", "There are " + more + " more problems of this kind or another."));
        }
        if (!problems.isEmpty()) {
            throw new ImportException(problems);
        }
    }
}
