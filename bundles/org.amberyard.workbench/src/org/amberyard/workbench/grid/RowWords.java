package org.amberyard.workbench.grid;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Words by which rows of a table are looked for: all must stand in a row, each in any of its cells. */
public final class RowWords {

    private final List<String> words;
    private final List<RowCondition> conditions;

    /** The words of a text, whose case does not count, nor which minus it has; none for a blank. */
    public RowWords(String text) {
        List<String> all = Arrays.stream(plain(text).split("\\s+")).filter(w -> !w.isEmpty()).toList();
        words = all.stream().filter(w -> RowCondition.of(w).isEmpty()).toList();
        conditions = all.stream().flatMap(w -> RowCondition.of(w).stream()).toList();
    }

    /** True when there is nothing to look for. */
    public boolean isEmpty() {
        return words.isEmpty() && conditions.isEmpty();
    }

    /** True when all words stand in the texts of a row, of whose columns nothing is known: no condition holds there. */
    public boolean in(Supplier<Stream<String>> cells) {
        return conditions.isEmpty() && allIn(cells);
    }

    /**
     * True when all words stand in the texts of a row and all conditions hold there.
     *
     * @param headers headers of its first texts
     */
    public boolean in(List<String> headers, Supplier<Stream<String>> cells) {
        return allIn(cells) && (conditions.isEmpty() || holds(headers, cells.get().toList()));
    }

    private boolean holds(List<String> headers, List<String> texts) {
        return conditions.stream().allMatch(c -> c.holds(() -> IntStream.range(0, Math.min(headers.size(), texts.size()))
                .mapToObj(i -> new RowCondition.Named(headers.get(i), texts.get(i)))));
    }

    private boolean allIn(Supplier<Stream<String>> cells) {
        return words.stream().allMatch(w -> cells.get().anyMatch(c -> plain(c).contains(w)));
    }

    private static String plain(String text) {
        return text.toLowerCase(Locale.getDefault()).replace('−', '-');
    }
}
