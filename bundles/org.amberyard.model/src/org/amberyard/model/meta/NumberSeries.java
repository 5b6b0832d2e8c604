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

    private NumberSeries() {
    }

    /**
     * The numbers of a text; none for a blank one.
     *
     * @throws NumberFormatException when a word is no number; the message names its place and the word
     */
    public static double[] parse(String text) {
        String[] words = text == null || text.isBlank() ? new String[0] : text.strip().split("\\s+", MOST + 1);
        if (words.length > MOST) {
            throw new NumberFormatException("there are more than " + MOST + " numbers");
        }
        double[] numbers = new double[words.length];
        for (int i = 0; i < words.length; i++) {
            numbers[i] = number(words[i], i);
        }
        return numbers;
    }

    private static double number(String word, int place) {
        try {
            if (word.chars().allMatch(c -> c >= '0' && c <= '9' || LETTERS_OF_NUMBERS.indexOf(c) >= 0)) {
                return Double.parseDouble(word);
            }
        } catch (NumberFormatException e) {
            // told below, with its place
        }
        throw new NumberFormatException("number " + (place + 1) + " is “" + word + "”, which is no number");
    }

    /** The text of numbers, rounded to decimals. */
    public static String text(double[] numbers, int decimals) {
        return Arrays.stream(numbers)
                .mapToObj(n -> PlainNumber.text(BigDecimal.valueOf(n).setScale(decimals, RoundingMode.HALF_UP).doubleValue()))
                .collect(Collectors.joining(" "));
    }
}
