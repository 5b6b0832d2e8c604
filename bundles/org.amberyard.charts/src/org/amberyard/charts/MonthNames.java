package org.amberyard.charts;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.Locale;

/** Names of months in charts; the core counts months from 0. */
public final class MonthNames {
    private MonthNames() {
    }

    /** For example {@code January}. */
    public static String full(int month) {
        return Month.of(month + 1).getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }

    /** For example {@code Jan}. */
    public static String brief(int month) {
        return Month.of(month + 1).getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
    }
}
