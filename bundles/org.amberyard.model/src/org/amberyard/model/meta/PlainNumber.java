package org.amberyard.model.meta;

import java.math.BigDecimal;

/** Numbers as plain text, free of the locale: {@code 0.65}, {@code 8200}. */
public final class PlainNumber {
    private PlainNumber() {
    }

    /** The number without exponent and without zeros at the end; NaN and infinity by their names. */
    public static String text(double number) {
        if (!Double.isFinite(number)) {
            return Double.toString(number);
        }
        return number == 0 ? "0" : BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }
}
