package org.amberyard.batch;

import java.io.PrintStream;
import java.util.List;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;

/** Findings grouped by how much they matter. */
final class FindingsText {
    private FindingsText() {
    }

    static void print(List<Finding> findings, PrintStream out) {
        for (Severity severity : Severity.values()) {
            List<Finding> some = findings.stream().filter(f -> f.severity() == severity).toList();
            if (!some.isEmpty()) {
                out.println(heading(severity, some.size()));
                some.forEach(f -> out.println("  " + f.message()));
            }
        }
    }

    private static String heading(Severity severity, int count) {
        String noun = switch (severity) {
            case ERROR -> "error";
            case WARNING -> "warning";
            case INFO -> "note";
        };
        return count + " " + noun + (count == 1 ? "" : "s") + ":";
    }
}
