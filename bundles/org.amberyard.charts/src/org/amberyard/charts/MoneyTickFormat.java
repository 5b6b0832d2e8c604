package org.amberyard.charts;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.FieldPosition;
import java.util.Locale;

/** Writes amounts on a money axis in thousands (k) or millions (M), one and the same along the axis. */
final class MoneyTickFormat extends AxisFormat {
    private static final long serialVersionUID = 1L;
    private static final double THOUSANDS_FROM = 5e3;
    private static final double MILLIONS_FROM = 1e6;

    private final double divisor;
    private final String suffix;
    private final DecimalFormat digits = new DecimalFormat("#,##0.##", DecimalFormatSymbols.getInstance(Locale.ROOT));

    private MoneyTickFormat(double divisor, String suffix) {
        this.divisor = divisor;
        this.suffix = suffix;
    }

    /** The format for an axis whose figures reach a size. */
    static MoneyTickFormat reaching(double largest) {
        if (largest >= MILLIONS_FROM) {
            return new MoneyTickFormat(1e6, "M");
        }
        return largest >= THOUSANDS_FROM ? new MoneyTickFormat(1e3, "k") : new MoneyTickFormat(1, "");
    }

    @Override
    public StringBuffer format(double number, StringBuffer to, FieldPosition position) {
        String text = digits.format(Math.abs(number) / divisor);
        boolean zero = "0".equals(text);
        return to.append(number < 0 && !zero ? "−" : "").append(text).append(zero ? "" : suffix);
    }
}
