package org.amberyard.workbench.language;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An English text with places, and the same in another language. A place is {@code {0}} for a name or figure that stays,
 * {@code {0~}} for words that are said in turn, and {@code {0!}} for words of one clause that must be in the catalogue, else another
 * text is meant; {@code {0#}} is for a figure, with its currency where it has one, and
 * {@code {0,}} for words without semicolon or bracket that are said in turn. The other text names them in the order of its language.
 */
final class Phrasing {
    private static final Pattern PLACE = Pattern.compile("\\{(\\d)([~!#,]?)\\}");
    private static final String KNOWN = "!";
    private static final String LIST = ",";
    private static final Set<String> SAID = Set.of(KNOWN, LIST, "~");
    private static final String WORDS = "(.+?)";
    private static final Map<String, String> PARTS =
            Map.of(KNOWN, "([^:]+?)", LIST, "([^;()]+?)", "#", "([+−–-]?(?:[A-Z]{3} |\\$)?[+−–-]?\\d(?:[\\d.,]*\\d)?)");

    private final Pattern english;
    private final String said;
    private final String longestPart;
    private final int fixed;
    private final List<Place> places = new ArrayList<>();

    private record Place(String mark, String kind) {
    }

    Phrasing(String english, String said) {
        this.said = said;
        StringBuilder regex = new StringBuilder();
        String longest = "";
        int letters = 0;
        int from = 0;
        Matcher place = PLACE.matcher(english);
        while (place.find()) {
            String part = english.substring(from, place.start());
            regex.append(Pattern.quote(part)).append(PARTS.getOrDefault(place.group(2), WORDS));
            longest = part.length() > longest.length() ? part : longest;
            letters += part.length();
            places.add(new Place("{" + place.group(1) + "}", place.group(2)));
            from = place.end();
        }
        String rest = english.substring(from);
        this.english = Pattern.compile(regex + Pattern.quote(rest), Pattern.DOTALL);
        this.longestPart = rest.length() > longest.length() ? rest : longest;
        this.fixed = letters + rest.length();
    }

    /** Number of letters outside its places: the more there are, the surer it is meant. */
    int fixed() {
        return fixed;
    }

    /**
     * What a text says; empty where it is another one.
     *
     * @param words says the words in places; empty for those that are not in the catalogue
     * @param figures writes figures in places
     */
    Optional<String> of(String text, Function<String, Optional<String>> words, UnaryOperator<String> figures) {
        if (!text.contains(longestPart)) {
            return Optional.empty();
        }
        Matcher match = english.matcher(text);
        if (!match.matches()) {
            return Optional.empty();
        }
        String filled = said;
        for (int i = 0; i < places.size(); i++) {
            String part = match.group(i + 1);
            Optional<String> word = SAID.contains(places.get(i).kind()) ? words.apply(part) : Optional.empty();
            if (word.isEmpty() && places.get(i).kind().equals(KNOWN)) {
                return Optional.empty();
            }
            filled = filled.replace(places.get(i).mark(), word.orElseGet(() -> figures.apply(part)));
        }
        return Optional.of(filled);
    }
}
