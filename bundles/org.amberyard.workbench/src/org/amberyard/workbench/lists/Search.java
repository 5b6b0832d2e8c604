package org.amberyard.workbench.lists;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.amberyard.workbench.lists.Section.Line;

/** Words that are looked for in lines, and how well a line has them. */
final class Search {
    private static final String BETWEEN_WORDS = "[^\\p{L}\\p{N}]+";

    private final List<String> words;
    private final String together;

    /** How well a line has the words, the best first. */
    enum Fit {
        /** Its name, or what it is also called, is just the words. */
        NAME,
        /** Its name begins with the words. */
        BEGINNING,
        /** The words stand in it as they were typed. */
        AS_TYPED,
        /** It has all of them, each as a whole word. */
        WHOLE_WORDS,
        /** It has all of them, be they parts of words. */
        PARTS,
        /** It has some, and the title of its section the others. */
        WITH_TITLE
    }

    /** @param typed what was typed */
    Search(String typed) {
        together = plain(typed).strip();
        words = Arrays.stream(together.split("\\s+")).filter(w -> !w.isEmpty()).toList();
    }

    /** In small letters, and in the spelling of the United States as well as of Britain. */
    private static String plain(String text) {
        return text.toLowerCase(Locale.ROOT).replace("labour", "labor").replace("tyre", "tire").replace("colour", "color").replace("programme", "program");
    }

    /** How well a line has the words; empty when it lacks one, or when a line that stands for several like it has them as well. */
    Optional<Fit> fit(Section section, Line line) {
        if (words.isEmpty()) {
            return line.among().isEmpty() ? Optional.of(Fit.PARTS) : Optional.empty();
        }
        if (line.among().filter(a -> has(plain(section.title() + " " + a.general())) || has(plain(a.element()))).isPresent()) {
            return Optional.empty();
        }
        List<String> names = line.also().stream().map(Search::plain).toList();
        String all = plain(line.text()) + " " + String.join(" ", names);
        if (!has(all)) {
            return has(plain(section.title()) + " " + all) ? Optional.of(Fit.WITH_TITLE) : Optional.empty();
        }
        return Optional.of(fit(plain(line.name()), plain(line.text()), names, all));
    }

    private Fit fit(String name, String text, List<String> also, String all) {
        if (name.equals(together) || also.contains(together)) {
            return Fit.NAME;
        }
        if ((name + " ").startsWith(together + " ")) {
            return Fit.BEGINNING;
        }
        if (spaced(text).contains(spaced(together)) || also.stream().anyMatch(a -> spaced(a).contains(spaced(together)))) {
            return Fit.AS_TYPED;
        }
        return words.stream().allMatch(word -> spaced(all).contains(spaced(word))) ? Fit.WHOLE_WORDS : Fit.PARTS;
    }

    private boolean has(String text) {
        return words.stream().allMatch(text::contains);
    }

    /** Words with one blank around each. */
    private static String spaced(String text) {
        return " " + text.replaceAll(BETWEEN_WORDS, " ").strip() + " ";
    }
}
