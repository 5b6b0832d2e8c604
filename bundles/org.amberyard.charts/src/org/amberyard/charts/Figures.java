package org.amberyard.charts;

import java.math.BigDecimal;
import java.math.MathContext;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;

/** Figures as they stand in sentences and labels: rounded for reading, never for computing. */
public final class Figures {
    private static final MathContext THREE_DIGITS = new MathContext(3);
    private static final BigDecimal MILLION = BigDecimal.valueOf(1_000_000);

    private Figures() {
    }

    /** An amount of money to three digits: {@code USD 1.23 million}, {@code USD 45,600}, {@code −USD 12.5}. */
    public static String money(String currency, double amount) {
        BigDecimal rounded = BigDecimal.valueOf(Math.abs(amount)).round(THREE_DIGITS);
        String size = rounded.compareTo(MILLION) >= 0 ? million(rounded) : grouped(rounded);
        return (amount < 0 && rounded.signum() > 0 ? "−" : "") + currency + " " + size;
    }

    private static String million(BigDecimal amount) {
        BigDecimal millions = amount.divide(MILLION);
        int decimals = Math.max(0, 2 - (millions.precision() - millions.scale() - 1));
        return pattern(decimals == 0 ? "#,##0" : "0." + "0".repeat(decimals)).format(millions) + " million";
    }

    private static String grouped(BigDecimal amount) {
        return pattern(amount.compareTo(BigDecimal.TEN) < 0 ? "0.00" : "#,##0.#").format(amount);
    }

    /** An amount of money to the whole unit: {@code USD 1,234,567}. */
    public static String exactMoney(String currency, double amount) {
        String size = whole(Math.abs(amount));
        return (amount < 0 && !"0".equals(size) ? "−" : "") + currency + " " + size;
    }

    /** A whole number with thousands separators: {@code 1,234}. */
    public static String whole(double value) {
        String text = pattern("#,##0").format(Math.abs(value));
        return (value < 0 && !"0".equals(text) ? "−" : "") + text;
    }

    /** A number with its sign, to the whole or, when it is smaller than one, with one decimal: {@code +23}, {@code −0.4}. */
    public static String signed(double value) {
        return (value < 0 ? "−" : "+") + size(value);
    }

    /** The size of a number, to the whole or, when it is smaller than one, with one decimal: {@code 23}, {@code 0.4}. */
    static String size(double value) {
        double size = Math.abs(value);
        return pattern(size < 1 ? "0.0" : "#,##0").format(size);
    }

    /** A number of years with one decimal: {@code 9.3 years}. */
    public static String years(double years) {
        return pattern("0.0").format(years) + " years";
    }

    /** A share as a percentage: {@code 20 %}. */
    public static String percent(double share) {
        return pattern("0.#").format(100 * share) + " %";
    }

    /** A share as a whole percentage: {@code 31 %}. */
    public static String wholePercent(double share) {
        return whole(100 * share) + " %";
    }

    /** A number format that does not depend on where the program runs. */
    static DecimalFormat pattern(String pattern) {
        return new DecimalFormat(pattern, DecimalFormatSymbols.getInstance(Locale.ROOT));
    }
}
