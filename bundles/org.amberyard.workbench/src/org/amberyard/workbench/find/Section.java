package org.amberyard.workbench.find;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * Things of a kind that can be gone to.
 *
 * @param title what they are
 * @param lines the things
 */
public record Section(String title, List<Line> lines) {

    /**
     * A thing.
     *
     * @param text what it is called
     * @param open goes to it
     */
    public record Line(String text, Runnable open) {
    }

    public Section {
        lines = List.copyOf(lines);
    }

    /** The same with those lines only that have every word, be it in the title; those that have the words as they stand come first. */
    Section having(List<String> words) {
        String together = String.join(" ", words);
        return new Section(title, lines.stream().filter(line -> {
            String sought = (title + " " + line.text()).toLowerCase(Locale.ROOT);
            return words.stream().allMatch(sought::contains);
        }).sorted(Comparator.comparing(line -> !line.text().toLowerCase(Locale.ROOT).contains(together))).toList());
    }
}
