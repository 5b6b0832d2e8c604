package org.amberyard.report.document;

/** Names that spreadsheets take for sheets. */
public final class SheetNames {
    private static final int LONGEST = 31;

    private SheetNames() {
    }

    /** A name without the signs that are not allowed, no longer than allowed. */
    public static String clean(String wanted) {
        return cut(wanted.replaceAll("[\\[\\]*?:/\\\\']", " ").strip(), LONGEST);
    }

    /** A clean name that is taken already, with a number that tells it apart. */
    static String numbered(String name, int number) {
        String suffix = " " + number;
        return cut(name, LONGEST - suffix.length()) + suffix;
    }

    private static String cut(String name, int longest) {
        return name.length() <= longest ? name : name.substring(0, longest).strip();
    }
}
