package org.amberyard.core.tariff;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.Locale;

/** Names of months in messages and labels. */
final class MonthNames {
    private MonthNames() {
    }

    /** Name of a month, 0 for January. */
    static String of(int month) {
        return Month.of(month + 1).getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }
}
