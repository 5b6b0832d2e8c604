package org.amberyard.exchange;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/** Numbers among the texts of an element; what is none is told with its line and element. */
final class EspiNumbers {
    private static final Pattern WHOLE = Pattern.compile("[+-]?\\d{1,15}");
    private static final Pattern DECIMAL = Pattern.compile("[+-]?(\\d{1,15}\\.?\\d{0,15}|\\.\\d{1,15})");

    private final Map<String, String> leaves;
    private final int line;
    private final ProblemList problems;

    EspiNumbers(Map<String, String> leaves, int line, ProblemList problems) {
        this.leaves = leaves;
        this.line = line;
        this.problems = problems;
    }

    /** A whole number that may be left out. */
    long whole(String name, long least, long most, long without) {
        return leaves.getOrDefault(name, "").isEmpty() ? without : whole(name, least, most);
    }

    /** A whole number that is needed; its least value where it is wrong. */
    long whole(String name, long least, long most) {
        String text = leaves.getOrDefault(name, "");
        if (WHOLE.matcher(text).matches()) {
            long number = Long.parseLong(text);
            if (number >= least && number <= most) {
                return number;
            }
        }
        problems.add(line, name, said(text) + String.format(Locale.ENGLISH, " must be a whole number from %,d to %,d.", least, most));
        return least;
    }

    /** A number that is needed; 0 where it is wrong. */
    double decimal(String name) {
        String text = leaves.getOrDefault(name, "");
        if (DECIMAL.matcher(text).matches()) {
            return Double.parseDouble(text);
        }
        problems.add(line, name, said(text) + " must be a number of up to 15 digits.");
        return 0;
    }

    private static String said(String text) {
        return text.isEmpty() ? "It is missing; it" : "“" + (text.length() > 40 ? text.substring(0, 40) + "…" : text) + "”";
    }
}
