package org.amberyard.report.document;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Paper that documents are laid out for. */
public enum Paper {
    /** US letter. */
    LETTER("Letter, 8.5 × 11 in", 612, 792, 1),
    /** US legal. */
    LEGAL("Legal, 8.5 × 14 in", 612, 1008, 5),
    /** Two letters side by side. */
    TABLOID("Tabloid, 11 × 17 in", 792, 1224, 3),
    /** ISO 216. */
    A4("A4, 210 × 297 mm", 595.28, 841.89, 9);

    /** Points in an inch. */
    static final int INCH = 72;
    private static final double MARGIN = 0.8 * INCH;
    private static final double WIDE_MARGIN = 0.6 * INCH;
    private static final double WIDEST_FIGURE = 6.8 * INCH;

    private final String label;
    private final double shortSide;
    private final double longSide;
    private final int spreadsheetCode;

    Paper(String label, double shortSide, double longSide, int spreadsheetCode) {
        this.label = label;
        this.shortSide = shortSide;
        this.longSide = longSide;
        this.spreadsheetCode = spreadsheetCode;
    }

    /** Name and size for people. */
    public String label() {
        return label;
    }

    /** Name on the command line. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The paper of a word. */
    public static Optional<Paper> of(String word) {
        return Arrays.stream(values()).filter(p -> p.word().equals(word)).findFirst();
    }

    /** All words. */
    public static String words() {
        return Arrays.stream(values()).map(Paper::word).collect(Collectors.joining(", "));
    }

    /** Shorter side, points. */
    double shortSide() {
        return shortSide;
    }

    /** Longer side, points. */
    double longSide() {
        return longSide;
    }

    /** Width of the text of a page, points. */
    double textWidth(boolean wide) {
        return wide ? longSide - 2 * WIDE_MARGIN : shortSide - 2 * MARGIN;
    }

    /** Width of a chart, points: that of the text of an upright page, up to a width at which it is easy to read. */
    double figureWidth() {
        return Math.min(WIDEST_FIGURE, textWidth(false));
    }

    /** By which spreadsheets know it (ECMA-376, paper sizes of page setup). */
    public int spreadsheetCode() {
        return spreadsheetCode;
    }
}
