package org.amberyard.exchange;

import java.util.Locale;

/** Keeps a feed from filling the memory: counts readings, and tells once when there are too many. */
final class EspiReadingLimit {
    private final int most;
    private final String file;
    private final ProblemList problems;
    private final ReadingProgress progress;
    private int count;

    EspiReadingLimit(String file, int most, ProblemList problems, ReadingProgress progress) {
        this.file = file;
        this.most = most;
        this.problems = problems;
        this.progress = progress;
    }

    /** Counts a reading; false when it is one too many. */
    boolean takes(int line) {
        if (count++ == most) {
            problems.add(line, "", String.format(Locale.ENGLISH,
                    "The file has more than %,d readings; ask for fewer years or meters at a time.", most));
        }
        if (count % 4096 == 0) {
            progress.step(file, count);
        }
        return count <= most;
    }

    boolean isReached() {
        return count > most;
    }
}
