package org.amberyard.study;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/**
 * The word that a mistyped one was meant to be. How far two words are apart is the number of letters put in, left out, changed or swapped
 * with their neighbour (the restricted edit distance of Damerau and Levenshtein; from memory).
 */
public final class NearWords {
    /** A word of so many letters may be mistyped by one; shorter ones, such as numbers of buses, are all alike. */
    private static final int LETTERS_PER_SLIP = 4;
    private static final int LONGEST = 200;

    private NearWords() {
    }

    /** The nearest of some words, capitals or not; empty where none is near. */
    public static Optional<String> nearest(String typed, Collection<String> among) {
        int most = typed.length() / LETTERS_PER_SLIP;
        if (most == 0 || typed.length() > LONGEST) {
            return Optional.empty();
        }
        return among.stream().filter(w -> Math.abs(w.length() - typed.length()) <= most && apart(typed, w) <= most)
                .min(Comparator.comparingInt((String w) -> apart(typed, w)).thenComparing(Comparator.naturalOrder()));
    }

    /** A sentence that asks for the nearest of some words, with a space before it; empty where none is near. */
    public static String hint(String typed, Collection<String> among) {
        return nearest(typed, among).map(w -> " Is “" + w + "” meant?").orElse("");
    }

    /** How far two words are apart. */
    static int apart(String one, String other) {
        String a = one.toLowerCase(Locale.ROOT);
        String b = other.toLowerCase(Locale.ROOT);
        int[][] slips = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                slips[i][j] = i == 0 || j == 0 ? i + j : slips(slips, a, b, i, j);
            }
        }
        return slips[a.length()][b.length()];
    }

    private static int slips(int[][] slips, String a, String b, int i, int j) {
        int changed = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        int least = Math.min(slips[i - 1][j - 1] + changed, 1 + Math.min(slips[i - 1][j], slips[i][j - 1]));
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(least, slips[i - 2][j - 2] + 1) : least;
    }
}
