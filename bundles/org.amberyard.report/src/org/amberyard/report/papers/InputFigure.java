package org.amberyard.report.papers;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.OptionalDouble;

/** An input as a figure: seven digits tell inputs apart that a person has entered in other units. */
final class InputFigure {
    private static final MathContext DIGITS = new MathContext(7);

    private InputFigure() {
    }

    /** A figure with as many digits as tell the input apart, and no more; else the words of the column. */
    static Object orWords(ResultLine line, String column) {
        OptionalDouble figure = line.number(column);
        return figure.isPresent() && Double.isFinite(figure.getAsDouble()) ? of(figure.getAsDouble()) : line.text(column);
    }

    static BigDecimal of(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(DIGITS).stripTrailingZeros();
        return rounded.setScale(Math.max(0, rounded.scale()));
    }
}
