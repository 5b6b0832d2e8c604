package org.amberyard.workbench.grid;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.swt.graphics.GC;

/** Remembers how wide texts are in the one font of a grid: asking the platform each time makes painting slow. */
final class TextWidths {

    private static final int MOST_KEPT = 20_000;

    private final Map<String, Integer> widths = new HashMap<>();

    /** Width of a text in the font of the graphics. */
    int of(GC gc, String text) {
        if (widths.size() > MOST_KEPT) {
            widths.clear();
        }
        return widths.computeIfAbsent(text, t -> gc.textExtent(t).x);
    }

    /** A text shortened to a width, with an ellipsis where it was cut. */
    String shortened(GC gc, String text, int width) {
        if (of(gc, text) <= width) {
            return text;
        }
        int low = 0;
        int high = text.length();
        while (low < high) {
            int middle = (low + high + 1) / 2;
            if (of(gc, text.substring(0, middle) + "…") <= width) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return text.substring(0, low) + "…";
    }

    /** A text broken at its blanks into lines no wider than a width, as long as no word is. */
    List<String> lines(GC gc, String text, int width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (line.isEmpty() || of(gc, longer) <= width) {
                line = longer;
            } else {
                lines.add(line);
                line = word;
            }
        }
        lines.add(line);
        return lines;
    }
}
