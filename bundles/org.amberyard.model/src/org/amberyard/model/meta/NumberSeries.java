package org.amberyard.model.meta;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Many numbers in one text, separated by blanks, with a point for the decimals whatever the locale. */
public final class NumberSeries {
    /** More than a day of seconds; keeps a damaged text from filling the memory. */
    private static final int MOST = 100_000;

    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,3})?");

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
        if (!NUMBER.matcher(word).matches()) {
            throw new NumberFormatException("number " + (place + 1) + " is “" + word + "”, which is no number");
        }
        return Double.parseDouble(word);
    }

    /** The text of numbers, rounded to decimals. */
    public static String text(double[] numbers, int decimals) {
        return Arrays.stream(numbers)
                .mapToObj(n -> PlainNumber.text(BigDecimal.valueOf(n).setScale(decimals, RoundingMode.HALF_UP).doubleValue()))
                .collect(Collectors.joining(" "));
    }
}
