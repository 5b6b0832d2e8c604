package org.amberyard.study;

import java.math.BigDecimal;
import java.math.MathContext;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Numbers as people of a locale write them; text that could be read in two ways is refused. */
public final class NumberText {
    /** More digits than any input has; enough that reading a shown number gives the stored one back to 1e-9. */
    private static final MathContext DIGITS = new MathContext(10);
    /** As many digits as a {@code double} may need; a text of more says what none of that many can. */
    private static final int DIGITS_OF_DOUBLE = 17;

    private final DecimalFormatSymbols symbols;
    private final Pattern grouped;

    /** Numbers of a locale. */
    public NumberText(Locale locale) {
        symbols = DecimalFormatSymbols.getInstance(locale);
        // What is shown must be read back, and is read in these digits alone.
        symbols.setZeroDigit('0');
        symbols.setMinusSign('-');
        String group = Pattern.quote(String.valueOf(symbols.getGroupingSeparator()));
        String decimal = Pattern.quote(String.valueOf(symbols.getDecimalSeparator()));
        grouped = Pattern.compile("[+-]?(\\d+|\\d{1,3}(" + group + "\\d{3})+)?(" + decimal + "\\d*)?([eE][+-]?\\d{1,3})?");
    }

    /** A number of at most ten digits, in groups of three when asked for. */
    public String text(double number, boolean withGroups) {
        if (!Double.isFinite(number)) {
            return String.valueOf(number);
        }
        DecimalFormat format = new DecimalFormat(withGroups ? "#,##0.############" : "0.############", symbols);
        return format.format(new BigDecimal(number).round(DIGITS));
    }

    /** A number of as many digits as tell it from all others, without groups. */
    String exactText(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString().replace('.', symbols.getDecimalSeparator());
    }

    /** A number of a count of digits, without groups. */
    String text(BigDecimal number, int digits) {
        return number.round(new MathContext(digits)).toPlainString().replace('.', symbols.getDecimalSeparator());
    }

    /** What was typed; empty when it is no number or could be read in two ways. */
    public Optional<Double> parse(String typed) {
        return plain(typed).map(Double::valueOf);
    }

    /** What was typed, of more digits than a {@code double} has; empty for any other. */
    Optional<BigDecimal> parseLong(String typed) {
        return plain(typed).map(BigDecimal::new).filter(n -> n.precision() > DIGITS_OF_DOUBLE);
    }

    /** The text of a number in the digits and signs of programs. */
    private Optional<String> plain(String typed) {
        String text = typed.replaceAll("[\\s\\u00a0\\u202f]", "").replace("\u2212", "-");
        boolean negative = text.startsWith("(") && text.endsWith(")");
        String bare = negative ? text.substring(1, text.length() - 1) : text;
        if (!grouped.matcher(bare).matches() || bare.chars().noneMatch(Character::isDigit)) {
            return Optional.empty();
        }
        String plain = bare.replace(String.valueOf(symbols.getGroupingSeparator()), "")
                .replace(symbols.getDecimalSeparator(), '.');
        return Optional.of(negative ? negated(plain) : plain);
    }

    private static String negated(String plain) {
        return plain.startsWith("-") ? plain.substring(1) : "-" + plain.replace("+", "");
    }
}
