package org.amberyard.workbench.grid;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Words by which rows of a table are looked for: all must stand in a row, each in any of its cells. */
public final class RowWords {

    private final List<String> words;

    /** The words of a text, whose case does not count, nor which minus it has; none for a blank. */
    public RowWords(String text) {
        words = Arrays.stream(plain(text).split("\\s+")).filter(w -> !w.isEmpty()).toList();
    }

    /** True when there is nothing to look for. */
    public boolean isEmpty() {
        return words.isEmpty();
    }

    /** True when all words stand in the texts of a row. */
    public boolean in(Supplier<Stream<String>> cells) {
        return words.stream().allMatch(w -> cells.get().anyMatch(c -> plain(c).contains(w)));
    }

    private static String plain(String text) {
        return text.toLowerCase(Locale.getDefault()).replace('−', '-');
    }
}
