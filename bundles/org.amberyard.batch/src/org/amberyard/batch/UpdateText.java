package org.amberyard.batch;

import java.io.PrintStream;
import java.util.List;

/** Prints what an import changed in a study. */
final class UpdateText {
    private static final int MOST_LISTED = 100;

    private UpdateText() {
    }

    static void print(List<String> changes, PrintStream out) {
        out.println(changes.isEmpty() ? "Nothing changed." : "Changed:");
        changes.stream().limit(MOST_LISTED).forEach(c -> out.println("  " + c));
        if (changes.size() > MOST_LISTED) {
            out.println("  and " + (changes.size() - MOST_LISTED) + " more");
        }
    }
}
