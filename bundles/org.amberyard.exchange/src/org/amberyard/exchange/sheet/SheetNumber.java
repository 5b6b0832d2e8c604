package org.amberyard.exchange.sheet;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as people write it into a table: {@code $1,234}, {@code (1,234)}, {@code 12 %}, {@code 32.2 km}.
 *
 * @param value the number
 * @param unit what stands behind it; empty for nothing
 */
record SheetNumber(double value, String unit) {
    private static final Pattern PARTS = Pattern.compile(
            "(?<open>\\()?\\s*(?<sign>[-+\u2212])?\\s*(?:[$€£]|[A-Z]{3}(?=\\s*[\\d.,]))?\\s*(?<number>[\\d.,][\\d.,'\u2019\u00a0\u202f ]*(?:[eE][+-]?\\d{1,3})?)\\s*"
                    + "(?<unit>[^\\d()]*?[²³]?)\\s*(?<close>\\))?");

    /** The number in a text; empty when it is none. */
    static Optional<SheetNumber> of(String text, NumberStyle style) {
        Matcher parts = PARTS.matcher(text.strip());
        if (!parts.matches() || (parts.group("open") == null) != (parts.group("close") == null)) {
            return Optional.empty();
        }
        OptionalDouble number = style.parse(parts.group("number"));
        boolean negative = parts.group("open") != null || parts.group("sign") != null && !parts.group("sign").equals("+");
        return number.isEmpty() ? Optional.empty()
                : Optional.of(new SheetNumber(negative ? -number.getAsDouble() : number.getAsDouble(), parts.group("unit").strip()));
    }
}
