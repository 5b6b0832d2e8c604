package org.amberyard.workbench.grid;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.graphics.GC;

/**
 * A text broken into lines at its blanks.
 *
 * @param lines the lines
 */
record WrappedText(List<String> lines) {

    /** Lines no wider than a width, as long as no word is. */
    static WrappedText of(GC gc, String text, int width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (line.isEmpty() || gc.textExtent(longer).x <= width) {
                line = longer;
            } else {
                lines.add(line);
                line = word;
            }
        }
        lines.add(line);
        return new WrappedText(lines);
    }

    /** A text shortened to a width, with an ellipsis where it was cut. */
    static String shortened(GC gc, String text, int width) {
        if (gc.textExtent(text).x <= width) {
            return text;
        }
        int low = 0;
        int high = text.length();
        while (low < high) {
            int middle = (low + high + 1) / 2;
            if (gc.textExtent(text.substring(0, middle) + "…").x <= width) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return text.substring(0, low) + "…";
    }
}
