package org.amberyard.modelgen;

import org.eclipse.emf.common.util.Diagnostic;

/** Words for what EMF found wrong. */
final class Problems {

    private Problems() {
    }

    /**
     * Puts a diagnostic and everything below it into one text, a line for each.
     *
     * @param diagnostic what EMF reported
     * @return the text
     */
    static String describe(Diagnostic diagnostic) {
        StringBuilder text = new StringBuilder();
        append(diagnostic, "", text);
        return text.toString();
    }

    private static void append(Diagnostic diagnostic, String indent, StringBuilder text) {
        text.append(indent).append(diagnostic.getMessage());
        if (diagnostic.getException() != null) {
            text.append(" (").append(diagnostic.getException()).append(')');
        }
        text.append(System.lineSeparator());
        diagnostic.getChildren().forEach(child -> append(child, indent + "  ", text));
    }
}
