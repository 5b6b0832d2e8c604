package org.amberyard.report.document;

/** Names that spreadsheets take for sheets. */
public final class SheetNames {
    private static final int LONGEST = 31;

    private SheetNames() {
    }

    /** A name without the signs that are not allowed, no longer than allowed. */
    public static String clean(String wanted) {
        String name = wanted.replaceAll("[\\[\\]*?:/\\\\']", " ").strip();
        return name.length() <= LONGEST ? name : name.substring(0, LONGEST).strip();
    }
}
