package org.amberyard.model.meta;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.stream.Collectors;

/** Many numbers in one text, separated by blanks, with a point for the decimals whatever the locale. */
public final class NumberSeries {
    /** More than a day of seconds; keeps a damaged text from filling the memory. */
    private static final int MOST = 100_000;

    /** What keeps Java's own words, such as NaN and 0x1p3, from being read as numbers. */
    private static final String LETTERS_OF_NUMBERS = "+-.eE";

    /** As many as a double holds exactly. */
    private static final int MOST_DIGITS = 15;
    private static final double[] POWERS_OF_TEN = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15};

    private NumberSeries() {
    }

    /**
     * The numbers of a text; none for a blank one.
     *
     * @throws NumberFormatException when a word is no number; the message names its place and the word
     */
    public static double[] parse(String text) {
        String all = text == null ? "" : text;
        double[] numbers = new double[Math.min(MOST, all.length() / 2 + 1)];
        int count = 0;
        int from = end(all, 0, true);
        while (from < all.length()) {
            if (count == MOST) {
                throw new NumberFormatException("there are more than " + MOST + " numbers");
            }
            int to = end(all, from, false);
            numbers[count] = number(all.substring(from, to), count);
            count++;
            from = end(all, to, true);
        }
        return Arrays.copyOf(numbers, count);
    }

    /** Where the blanks, or the word, at a place end. */
    private static int end(String text, int from, boolean blank) {
        int at = from;
        while (at < text.length() && Character.isWhitespace(text.charAt(at)) == blank) {
            at++;
        }
        return at;
    }

    private static double number(String word, int place) {
        double plain = plain(word);
        if (!Double.isNaN(plain)) {
            return plain;
        }
        try {
            if (word.chars().allMatch(c -> c >= '0' && c <= '9' || LETTERS_OF_NUMBERS.indexOf(c) >= 0)) {
                return Double.parseDouble(word);
            }
        } catch (NumberFormatException e) {
            // told below, with its place
        }
        throw new NumberFormatException("number " + (place + 1) + " is “" + word + "”, which is no number");
    }

    /**
     * The number of a word of a few digits, with or without a point, which is most of them; not a number for any other word. Both
     * the digits and the power of ten are held exactly, so that their quotient is the nearest double, as Java's own reading is.
     */
    private static double plain(String word) {
        if (word.length() > MOST_DIGITS) {
            return Double.NaN;
        }
        long digits = 0;
        int point = -1;
        for (int at = 0; at < word.length(); at++) {
            char letter = word.charAt(at);
            if (letter >= '0' && letter <= '9') {
                digits = 10 * digits + letter - '0';
            } else if (letter == '.' && point < 0) {
                point = at;
            } else {
                return Double.NaN;
            }
        }
        int decimals = point < 0 ? 0 : word.length() - point - 1;
        return word.length() > (point < 0 ? 0 : 1) ? digits / POWERS_OF_TEN[decimals] : Double.NaN;
    }

    /** The text of numbers, rounded to decimals. */
    public static String text(double[] numbers, int decimals) {
        return Arrays.stream(numbers)
                .mapToObj(n -> PlainNumber.text(BigDecimal.valueOf(n).setScale(decimals, RoundingMode.HALF_UP).doubleValue()))
                .collect(Collectors.joining(" "));
    }
}
