package org.amberyard.report.papers;

import java.math.BigDecimal;
import java.math.MathContext;

/** An input as a figure: seven digits tell inputs apart that a person has entered in other units. */
final class InputFigure {
    private static final MathContext DIGITS = new MathContext(7);

    private InputFigure() {
    }

    static BigDecimal of(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(DIGITS).stripTrailingZeros();
        return rounded.setScale(Math.max(0, rounded.scale()));
    }
}
