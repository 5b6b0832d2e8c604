package org.amberyard.core.units;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;

/** Names of months in messages, tables and charts; months count from 0. */
public final class MonthNames {
    private static final int MONTHS = 12;

    private MonthNames() {
    }

    /**
     * @throws IllegalArgumentException when a month is not one of the twelve
     */
    public static void require(int month) {
        if (month < 0 || month >= MONTHS) {
            throw new IllegalArgumentException("month is " + month + " but must be 0 for January to 11 for December");
        }
    }

    /** For example {@code January}. */
    public static String full(int month) {
        return Month.of(month + 1).getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }

    /** For example {@code Jan}. */
    public static String brief(int month) {
        return Month.of(month + 1).getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
    }

    /** Words for months in order, such as "every month" or "January to May, October". */
    public static String of(List<Integer> months) {
        if (months.size() == MONTHS) {
            return "every month";
        }
        StringJoiner words = new StringJoiner(", ");
        int first = 0;
        for (int m = 0; m < months.size(); m++) {
            if (m + 1 == months.size() || months.get(m + 1) != months.get(m) + 1) {
                words.add(first == m ? full(months.get(m)) : full(months.get(first)) + " to " + full(months.get(m)));
                first = m + 1;
            }
        }
        return words.toString();
    }
}
