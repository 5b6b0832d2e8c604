package org.amberyard.workbench.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Names of types short enough for narrow cells: long words are cut to so many letters as tell all names apart, years of a span
 * to two digits. “Diesel C 2005-2009” beside “Electric C 150” becomes “DC 05-09”.
 */
final class ShortNames {

    /** Words of no more letters stay whole. */
    private static final int SHORT = 3;
    private static final int MOST_LETTERS = 12;
    private static final Pattern SPAN = Pattern.compile("\\d\\d(\\d\\d)([-–])\\d\\d(\\d\\d)");

    private ShortNames() {
    }

    /** Short names, as different as the names are. */
    static List<String> of(List<String> names) {
        int different = new HashSet<>(names).size();
        for (int letters = 1; letters <= MOST_LETTERS; letters++) {
            int kept = letters;
            List<String> shortened = names.stream().map(n -> shortened(n, kept)).toList();
            if (new HashSet<>(shortened).size() == different) {
                return shortened;
            }
        }
        return List.copyOf(names);
    }

    private static String shortened(String name, int letters) {
        List<String> words = new ArrayList<>();
        boolean initial = false;
        for (String word : name.strip().split("\\s+")) {
            String cut = shortenedWord(word, letters);
            boolean single = cut.length() == 1 && Character.isLetter(cut.charAt(0));
            if (initial && single) {
                words.add(words.remove(words.size() - 1) + cut);
            } else {
                words.add(cut);
            }
            initial = single;
        }
        return String.join(" ", words);
    }

    private static String shortenedWord(String word, int letters) {
        Matcher span = SPAN.matcher(word);
        if (span.matches()) {
            return span.group(1) + span.group(2) + span.group(3);
        }
        boolean isLong = word.length() > SHORT && word.chars().allMatch(Character::isLetter);
        return isLong ? word.substring(0, Math.min(word.length(), letters)) : word;
    }
}
