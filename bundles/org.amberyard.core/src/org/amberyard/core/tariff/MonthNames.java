package org.amberyard.core.tariff;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;

/** Names of months in messages and labels. */
final class MonthNames {
    private static final int MONTHS = 12;

    private MonthNames() {
    }

    /**
     * @throws IllegalArgumentException when a month is not one of the twelve
     */
    static void require(int month) {
        if (month < 0 || month >= MONTHS) {
            throw new IllegalArgumentException("month is " + month + " but must be 0 for January to 11 for December");
        }
    }

    /** Name of a month, 0 for January. */
    static String of(int month) {
        return Month.of(month + 1).getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }

    /** Words for months in order, such as "every month" or "January to May, October". */
    static String of(List<Integer> months) {
        if (months.size() == MONTHS) {
            return "every month";
        }
        StringJoiner words = new StringJoiner(", ");
        int first = 0;
        for (int m = 0; m < months.size(); m++) {
            if (m + 1 == months.size() || months.get(m + 1) != months.get(m) + 1) {
                words.add(first == m ? of(months.get(m)) : of(months.get(first)) + " to " + of(months.get(m)));
                first = m + 1;
            }
        }
        return words.toString();
    }
}
