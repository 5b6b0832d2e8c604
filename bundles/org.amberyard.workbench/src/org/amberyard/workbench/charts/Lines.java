package org.amberyard.workbench.charts;

import org.eclipse.swt.graphics.GC;

/** Breaks a message into lines. */
final class Lines {

    private Lines() {
    }

    /** The text with line breaks where it would be wider than a width. */
    static String wrapped(GC gc, String text, int width) {
        StringBuilder wrapped = new StringBuilder();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ")) {
            if (!line.isEmpty() && gc.textExtent(line + " " + word).x > width) {
                wrapped.append(line).append('\n');
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        return wrapped.append(line).toString();
    }
}
