package org.amberyard.exchange.sheet;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A number as people write it into a table: {@code $1,234}, {@code (1,234)}, {@code $-5}, {@code 1,234-}, {@code 12 %}, {@code 32.2 km}.
 *
 * @param value the number
 * @param unit what stands behind it; empty for nothing
 * @param isMoney true when a currency stands before it
 */
record SheetNumber(double value, String unit, boolean isMoney) {
    /** Most characters of a number with its unit; a longer text is none. */
    private static final int LONGEST = 64;
    /** Each part takes all that it can and gives nothing back, so that a text is gone through once. */
    private static final Pattern PARTS = Pattern.compile(
            "(?<open>\\()?\\s*+(?<sign>[-+\u2212])?\\s*+(?<money>[$€£]|[A-Z]{3}(?=\\s*+[-+\u2212\\d.,]))?\\s*+(?<inner>[-+\u2212])?"
                    + "(?<number>[\\d.,]++(?:['\u2019\u00a0\u202f ]++[\\d.,]++)*+(?:[eE][+-]?\\d{1,3})?)(?<unit>[^\\d()]*+)(?<close>\\))?");
    private static final Pattern MINUS = Pattern.compile("[-\u2212]");

    /** The number in a text; empty when it is none. */
    static Optional<SheetNumber> of(String text, NumberStyle style) {
        String bare = text.strip();
        Matcher parts = PARTS.matcher(bare);
        if (bare.length() > LONGEST || !parts.matches() || (parts.group("open") == null) != (parts.group("close") == null)) {
            return Optional.empty();
        }
        String unit = parts.group("unit").strip();
        boolean behind = MINUS.matcher(unit).matches();
        List<String> signs = Stream.of(parts.group("open"), parts.group("sign"), parts.group("inner"), behind ? unit : null).filter(Objects::nonNull).toList();
        OptionalDouble number = style.parse(parts.group("number"));
        if (number.isEmpty() || signs.size() > 1) {
            return Optional.empty();
        }
        boolean negative = !signs.isEmpty() && !signs.get(0).equals("+");
        return Optional.of(new SheetNumber(negative ? -number.getAsDouble() : number.getAsDouble(), behind ? "" : unit, parts.group("money") != null));
    }
}
