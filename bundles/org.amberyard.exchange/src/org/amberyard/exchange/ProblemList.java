package org.amberyard.exchange;

import java.util.ArrayList;
import java.util.List;

/** Collects the problems of one file; after many it counts on without keeping them, for nobody reads a thousand. */
public final class ProblemList {
    private static final int MOST_LISTED = 50;
    private static final int MOST_COUNTED = 10_000;

    private final String file;
    private final List<ImportProblem> problems = new ArrayList<>();
    private int more;

    /** Problems of the file of this name. */
    public ProblemList(String file) {
        this.file = file;
    }

    /** Adds a problem; row and column as in {@link ImportProblem}. */
    public void add(int row, String column, String message) {
        add(file, row, column, message);
    }

    /** Adds a problem of another file, where several make one import. */
    public void add(String otherFile, int row, String column, String message) {
        if (problems.size() < MOST_LISTED) {
            problems.add(new ImportProblem(otherFile, row, column, message));
        } else {
            more++;
        }
    }

    /** The refusal of a file for one reason. */
    public static ImportException refusal(String file, int row, String column, String message) {
        return new ImportException(List.of(new ImportProblem(file, row, column, message)));
    }

    /** True as long as nothing is wrong. */
    public boolean isEmpty() {
        return problems.isEmpty();
    }

    /** True when there are so many that reading on is of no use. */
    public boolean isFull() {
        return more >= MOST_COUNTED;
    }

    /** @throws ImportException when there are any */
    public void refuseIfAny() throws ImportException {
        if (more > 0) {
            problems.add(new ImportProblem(file, 0, "", "There are " + more + " more problems of this kind or another."));
        }
        if (!problems.isEmpty()) {
            throw new ImportException(problems);
        }
    }
}
