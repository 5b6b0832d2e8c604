package org.amberyard.report.document;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * How figures are rounded for print, in every document and table: half a unit up, away from zero, as readers check by hand (common
 * practice, no source). What binary numbers add beyond the sixth digit after the last that is printed does not count.
 */
public final class PrintRounding {
    /** Decimals of a cent. */
    private static final int CENTS = 2;
    private static final int NOISE_DIGITS = 6;

    private PrintRounding() {
    }

    /** A finite figure with some decimals. */
    public static BigDecimal rounded(double value, int decimals) {
        return rounded(exact(value, decimals), decimals);
    }

    /**
     * Money with some decimals: first to the cent, in which it is paid, then these. So whoever rounds printed cents gets printed
     * units.
     */
    public static BigDecimal money(double value, int decimals) {
        return rounded(cents(value), decimals);
    }

    /** Money to the cent. */
    public static BigDecimal cents(double value) {
        return rounded(value, CENTS);
    }

    /** A figure without the noise of binary numbers, to be summed before it is rounded. */
    static BigDecimal exact(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals + NOISE_DIGITS, RoundingMode.HALF_UP);
    }

    static BigDecimal rounded(BigDecimal exact, int decimals) {
        return exact.setScale(decimals, RoundingMode.HALF_UP);
    }
}
