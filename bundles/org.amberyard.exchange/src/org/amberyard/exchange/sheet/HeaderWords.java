package org.amberyard.exchange.sheet;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The words of a header, in small letters: {@code AM_depart}, {@code AmDepart} and {@code AM depart} are alike.
 *
 * @param words words and signs of units in order
 */
record HeaderWords(List<String> words) {

    private static final List<String> UNIT = List.of("unit");
    private static final Set<String> PRICES = Set.of("price", "cost", "rate", "amount");
    private static final Pattern BORDER = Pattern.compile("(?<=[A-Za-z][a-z])(?=[A-Z][a-z])");
    private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}\\p{N}%$°²³#]+");

    HeaderWords {
        words = List.copyOf(words);
    }

    static HeaderWords of(String header) {
        String parted = BORDER.matcher(header).replaceAll(" ").toLowerCase(Locale.ROOT);
        return new HeaderWords(BETWEEN.splitAsStream(parted).filter(w -> !w.isEmpty())
                .map(w -> w.equals("#") || w.equals("no") || w.equals("nr") ? "number" : w).toList());
    }

    /** The same without the words that name a unit, unless nothing else is left. */
    HeaderWords without(List<String> unitWords) {
        List<String> left = words.stream().filter(w -> !unitWords.contains(w)).toList();
        return left.isEmpty() ? this : new HeaderWords(left);
    }

    /** True when all words of another stand in it; a unit by itself names a bus, but a unit price does not. */
    boolean holds(HeaderWords other) {
        boolean price = other.words.equals(UNIT) && words.stream().anyMatch(PRICES::contains);
        return !price && words.containsAll(other.words);
    }
}
