package org.amberyard.workbench.grid;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Words by which rows of a table are looked for: all must stand in a row, each in any of its cells, or state what holds for its figures. */
public final class RowWords {

    private final List<Word> words;

    /** A word and the condition that it states, if it does. */
    private record Word(String text, Optional<RowCondition> condition) {
    }

    /** The words of a text, whose case does not count, nor which minus it has; none for a blank. */
    public RowWords(String text) {
        words = Arrays.stream(plain(text).split("\\s+")).filter(w -> !w.isEmpty()).map(w -> new Word(w, RowCondition.of(w))).toList();
    }

    /** True when there is nothing to look for. */
    public boolean isEmpty() {
        return words.isEmpty();
    }

    /** True when all words stand in the texts of a row, of whose columns nothing is known. */
    public boolean in(Supplier<Stream<String>> cells) {
        return words.stream().allMatch(w -> stands(w, cells));
    }

    /**
     * True when each word stands in the texts of a row, or is a condition that holds there.
     *
     * @param headers headers of its first texts
     */
    public boolean in(List<String> headers, Supplier<Stream<String>> cells) {
        return words.stream().allMatch(w -> stands(w, cells) || w.condition().isPresent() && holds(w.condition().get(), headers, cells.get().toList()));
    }

    private static boolean holds(RowCondition condition, List<String> headers, List<String> texts) {
        return condition.holds(() -> IntStream.range(0, Math.min(headers.size(), texts.size()))
                .mapToObj(i -> new RowCondition.Named(headers.get(i), texts.get(i))));
    }

    private static boolean stands(Word word, Supplier<Stream<String>> cells) {
        return cells.get().anyMatch(c -> plain(c).contains(word.text()));
    }

    private static String plain(String text) {
        return text.toLowerCase(Locale.getDefault()).replace('−', '-');
    }
}
