package org.amberyard.exchange.sheet;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** How numbers in a file are written. */
public enum NumberStyle {
    /** A point before decimals: 1,234.5. */
    POINT("point", '.', "[,'\u2019\u00a0\u202f ]", "\\."),
    /** A comma before decimals: 1.234,5. */
    COMMA("comma", ',', "[.'\u2019\u00a0\u202f ]", ",");

    /** Most characters of a number. */
    private static final int LONGEST = 64;
    private static final Pattern DECIMAL_COMMA =
            Pattern.compile("[+-]?(\\d{1,3}(\\.\\d{3})+|\\d+),(\\d{1,2}|\\d{4,})|[+-]?\\d{1,3}(\\.\\d{3})+,\\d{3}|[+-]?0,\\d+");
    private static final Pattern DECIMAL_POINT =
            Pattern.compile("[+-]?(\\d{1,3}(,\\d{3})+|\\d+)\\.(\\d{1,2}|\\d{4,})|[+-]?\\d{1,3}(,\\d{3})+\\.\\d{3}|[+-]?0\\.\\d+");

    private final String word;
    private final char sign;
    private final Pattern number;
    private final Pattern group;
    private final Pattern decimal;

    NumberStyle(String word, char sign, String group, String decimal) {
        this.word = word;
        this.sign = sign;
        this.group = Pattern.compile(group);
        this.decimal = Pattern.compile(decimal);
        this.number = Pattern.compile("[+-]?([1-9]\\d{0,2}(" + group + "\\d{3})+|\\d+)?(" + decimal + "\\d*)?([eE][+-]?\\d{1,3})?");
    }

    /** The style of texts; that with a point where nothing shows it. */
    static NumberStyle of(Collection<String> texts) {
        return shownBy(texts).orElse(POINT);
    }

    /**
     * The style that texts show: more of them can only be read with it than can only be read with the other. A comma or point before just
     * three digits tells nothing, but after a zero alone it stands before decimals: no group of thousands begins with zero.
     */
    static Optional<NumberStyle> shownBy(Collection<String> texts) {
        List<String> numbers = texts.stream().map(String::strip).filter(t -> t.length() <= LONGEST).toList();
        long commas = numbers.stream().filter(t -> DECIMAL_COMMA.matcher(t).matches()).count();
        long points = numbers.stream().filter(t -> DECIMAL_POINT.matcher(t).matches()).count();
        return commas == points ? Optional.empty() : Optional.of(commas > points ? COMMA : POINT);
    }

    /** What stands before decimals, within a sentence. */
    String word() {
        return word;
    }

    /** A number written so, without groups. */
    String text(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString().replace('.', sign);
    }

    /** The number that a bare text stands for, without unit or currency; empty when it is none, or beyond all that can be held. */
    OptionalDouble parse(String text) {
        String bare = text.strip().replace('\u2212', '-');
        if (!number.matcher(bare).matches() || bare.chars().noneMatch(Character::isDigit)) {
            return OptionalDouble.empty();
        }
        String plain = decimal.matcher(group.matcher(bare).replaceAll("")).replaceAll(".");
        double read = Double.parseDouble(plain);
        return Double.isFinite(read) ? OptionalDouble.of(read) : OptionalDouble.empty();
    }
}
