package org.amberyard.charts;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.amberyard.core.duty.Climate;

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

    /** Full names from January to December. */
    public static List<String> all() {
        return IntStream.range(0, Climate.MONTHS).mapToObj(MonthNames::full).toList();
    }
}
