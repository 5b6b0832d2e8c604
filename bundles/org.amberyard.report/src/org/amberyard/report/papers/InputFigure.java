package org.amberyard.report.papers;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;

/** An input as a figure in running text: seven digits tell inputs apart that a person has entered in other units. */
final class InputFigure {
    private static final MathContext DIGITS = new MathContext(7);
    /** From here on figures are grouped; years are not. */
    private static final double GROUPED_FROM = 10_000;

    private InputFigure() {
    }

    static String text(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(DIGITS).stripTrailingZeros();
        int decimals = Math.max(0, rounded.scale());
        return String.format(Locale.ROOT, (Math.abs(value) >= GROUPED_FROM ? "%,." : "%.") + decimals + "f", rounded);
    }
}
