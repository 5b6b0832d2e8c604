package org.amberyard.report.document;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;

/**
 * How the figures of a column are rounded and printed.
 *
 * @param kind what they are
 * @param decimals decimals printed
 * @param money true for money, which is rounded to the cent first
 */
public record CellFormat(Kind kind, int decimals, boolean money) {

    /** What a column holds. */
    public enum Kind {
        /** Words. */
        TEXT,
        /** Calendar years, without a thousands separator. */
        YEAR,
        /** Figures. */
        NUMBER,
        /** Shares, printed in per cent. */
        PERCENT,
        /** Words or figures, each figure with decimals of its own. */
        VALUE
    }

    /** Words. */
    public static final CellFormat TEXT = new CellFormat(Kind.TEXT, 0);
    /** Calendar years. */
    public static final CellFormat YEAR = new CellFormat(Kind.YEAR, 0);
    /** Whole numbers: miles, gallons, hours. */
    public static final CellFormat WHOLE = new CellFormat(Kind.NUMBER, 0);
    /** Money in all, in whole units. */
    public static final CellFormat MONEY = new CellFormat(Kind.NUMBER, 0, true);
    /** Unit prices, to the cent. */
    public static final CellFormat CENTS = new CellFormat(Kind.NUMBER, 2);
    /** Shares in per cent with one decimal. */
    public static final CellFormat PERCENT = new CellFormat(Kind.PERCENT, 1);

    /** Words or figures. */
    public static final CellFormat VALUE = new CellFormat(Kind.VALUE, 0);

    /** From here on figures among words are grouped; years are not. */
    private static final BigDecimal GROUPED_FROM = BigDecimal.valueOf(10_000);
    private static final int PERCENT_DECIMALS = 2;

    /** What is no money. */
    public CellFormat(Kind kind, int decimals) {
        this(kind, decimals, false);
    }

    /** Figures with some decimals. */
    public static CellFormat decimals(int decimals) {
        return new CellFormat(Kind.NUMBER, decimals);
    }

    /** True where figures stand to the right. */
    public boolean right() {
        return kind != Kind.TEXT && kind != Kind.VALUE;
    }

    /** Decimals of the stored figure; a share of 12.3 % is stored as 0.123. */
    int storedDecimals() {
        return kind == Kind.PERCENT ? decimals + PERCENT_DECIMALS : decimals;
    }

    /** A figure as it is printed and stored, by the rule of {@link PrintRounding}. */
    public BigDecimal rounded(double value) {
        return money ? PrintRounding.money(value, storedDecimals()) : PrintRounding.rounded(value, storedDecimals());
    }

    /** Figures as they are printed, so that they add up to their sum, which is rounded once. */
    List<BigDecimal> addingUp(List<Double> figures) {
        return AddingUp.rounded(money ? figures.stream().map(f -> PrintRounding.cents(f).doubleValue()).toList() : figures,
                storedDecimals());
    }

    /** A stored figure as it is printed, as a number: shares in per cent. */
    BigDecimal plain(BigDecimal stored) {
        return kind == Kind.PERCENT ? stored.movePointRight(PERCENT_DECIMALS).setScale(decimals, RoundingMode.UNNECESSARY) : stored;
    }

    /** A cell as it is printed. */
    public String print(Object cell) {
        if (cell == null) {
            return right() ? "–" : "";
        }
        if (!(cell instanceof BigDecimal number)) {
            return cell.toString();
        }
        return switch (kind) {
            case PERCENT -> grouped(plain(number)) + " %";
            case YEAR -> number.toPlainString();
            case VALUE -> number.abs().compareTo(GROUPED_FROM) < 0 ? number.toPlainString().replace('-', '−') : grouped(number);
            default -> grouped(number);
        };
    }

    private static String grouped(BigDecimal number) {
        String text = String.format(Locale.ROOT, "%,." + Math.max(0, number.scale()) + "f", number.abs());
        return number.signum() < 0 ? "−" + text : text;
    }

    /** The format of a figure that is rounded to other decimals than those of its column. */
    CellFormat of(BigDecimal figure) {
        return kind == Kind.NUMBER || kind == Kind.VALUE ? new CellFormat(kind, Math.max(0, figure.scale())) : this;
    }

    /** The number format of spreadsheets. */
    String spreadsheet() {
        String places = decimals == 0 ? "" : "." + "0".repeat(decimals);
        return switch (kind) {
            case TEXT -> "@";
            case YEAR -> "0";
            case PERCENT -> "0" + places + "%";
            case VALUE -> "[>=%2$s]#,##0%1$s;[<=-%2$s]-#,##0%1$s;0%1$s".formatted(places, GROUPED_FROM);
            default -> "#,##0" + places;
        };
    }
}
