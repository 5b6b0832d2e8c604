package org.amberyard.workbench.grid;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.amberyard.study.NumberText;

/**
 * What the figure of a column must be for its row to be shown, such as {@code gvwr>=14001} or {@code engine<=2010}.
 *
 * @param column word with which a word of the header begins, in small letters
 * @param sign how the figure is compared
 * @param figure what it is compared with
 */
record RowCondition(String column, String sign, double figure) {
    private static final Pattern FORM = Pattern.compile("(\\p{L}[\\p{L}/.-]*)(<=|>=|<|>|=)(-?[\\d.,]+)");
    private static final Pattern WORDS = Pattern.compile("[^\\p{L}\\p{N}]+");

    /** A cell of a row by the header of its column. */
    record Named(String header, String text) {
    }

    /** The condition that a word states; empty for any other word. */
    static Optional<RowCondition> of(String word) {
        Matcher form = FORM.matcher(word);
        return form.matches() ? number(form.group(3)).map(n -> new RowCondition(form.group(1).toLowerCase(Locale.getDefault()), form.group(2), n))
                : Optional.empty();
    }

    private static Optional<Double> number(String text) {
        return new NumberText(Locale.getDefault(Locale.Category.FORMAT)).parse(text.replace('−', '-'));
    }

    /** True where a column of that name has such a figure; a cell without a figure has none. */
    boolean holds(Supplier<Stream<Named>> cells) {
        return cells.get().filter(c -> WORDS.splitAsStream(c.header().toLowerCase(Locale.getDefault())).anyMatch(w -> w.startsWith(column)))
                .anyMatch(c -> number(c.text()).filter(this::compares).isPresent());
    }

    private boolean compares(double value) {
        return switch (sign) {
            case "<=" -> value <= figure;
            case ">=" -> value >= figure;
            case "<" -> value < figure;
            case ">" -> value > figure;
            default -> value == figure;
        };
    }
}
