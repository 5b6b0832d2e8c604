package org.amberyard.workbench.charts;

import java.text.FieldPosition;
import java.text.NumberFormat;
import java.text.ParsePosition;
import org.amberyard.workbench.language.Words;

/** Figures along an axis as the locale writes them. */
final class LocalTickFormat extends NumberFormat {
    private static final long serialVersionUID = 1L;

    private final NumberFormat made;

    LocalTickFormat(NumberFormat made) {
        this.made = made;
    }

    @Override
    public StringBuffer format(double number, StringBuffer to, FieldPosition position) {
        return to.append(Words.figure(made.format(number)));
    }

    @Override
    public StringBuffer format(long number, StringBuffer to, FieldPosition position) {
        return format((double) number, to, position);
    }

    @Override
    public Number parse(String text, ParsePosition position) {
        return made.parse(text, position);
    }
}
