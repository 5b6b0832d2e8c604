package org.amberyard.exchange.sheet;

/**
 * A cell as it was read.
 *
 * @param kind what the file says that it holds
 * @param text what stands in it: numbers with a point for decimals and without groups, dates as 2026-09-30, moments as 2026-09-30
 *            06:35, times as 06:35; of text files the text itself; empty for a blank cell
 */
public record SheetCell(Kind kind, String text) {

    /** What a cell may hold. */
    public enum Kind {
        /** Nothing. */
        BLANK,
        /** Text, which may well mean a number. */
        TEXT,
        /** A number. */
        NUMBER,
        /** A date, a time or both. */
        DATE,
        /** A formula that has failed, or whose result was never computed. */
        ERROR
    }

    /** A cell without anything in it. */
    public static final SheetCell BLANK = new SheetCell(Kind.BLANK, "");

    /** A cell of a text file; blank when nothing but spaces stands in it. */
    static SheetCell ofText(String text) {
        String bare = text.replace('\u00a0', ' ').strip();
        return bare.isEmpty() ? BLANK : new SheetCell(Kind.TEXT, bare);
    }

    /** True when nothing stands in it. */
    public boolean isBlank() {
        return kind == Kind.BLANK;
    }
}
