package org.amberyard.exchange.sheet;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Dates of one column: 2025-09-04, 9/4/2025, 9/4/25, 04.09.2025, each with or without a time behind it. Days stand before months where
 * a first number is above 12, or where points part them.
 */
final class SheetDates {
    private static final Pattern DATE = Pattern.compile(
            "(?:(\\d{4})-(\\d{1,2})-(\\d{1,2})|(\\d{1,2})[/.-](\\d{1,2})[/.-](\\d{4}|\\d{2}))(?:[T\\s].*)?");
    /** Days since the end of 1899 at which numbers begin to be taken for dates that have lost their format: 1990 to 2080. */
    private static final int FIRST_SERIAL = 32_874;
    private static final int LAST_SERIAL = 65_745;
    private static final LocalDate SERIAL_ZERO = LocalDate.of(1899, 12, 30);
    private static final int CENTURY = 2000;
    private static final int TWO_DIGITS = 100;
    private static final int MOST_MONTHS = 12;

    private final boolean dayFirst;
    private final boolean ambiguous;

    SheetDates(Stream<String> texts) {
        List<Matcher> dates = texts.map(t -> DATE.matcher(t.strip())).filter(Matcher::matches).filter(d -> d.group(4) != null).toList();
        dayFirst = dates.stream().anyMatch(d -> Integer.parseInt(d.group(4)) > MOST_MONTHS || d.group(0).indexOf('.') > 0);
        ambiguous = !dates.isEmpty() && !dayFirst && dates.stream().noneMatch(d -> Integer.parseInt(d.group(5)) > MOST_MONTHS);
    }

    /** True when no date tells whether days or months come first; months are then taken to. */
    boolean areAmbiguous() {
        return ambiguous;
    }

    /** The date in a text; empty when it is none. */
    Optional<LocalDate> of(String text) {
        Matcher date = DATE.matcher(text.strip());
        return date.matches() ? of(date) : serial(text);
    }

    private Optional<LocalDate> of(Matcher date) {
        try {
            if (date.group(1) != null) {
                return Optional.of(LocalDate.of(number(date, 1), number(date, 2), number(date, 3)));
            }
            int year = number(date, 6) < TWO_DIGITS ? CENTURY + number(date, 6) : number(date, 6);
            return Optional.of(LocalDate.of(year, number(date, dayFirst ? 5 : 4), number(date, dayFirst ? 4 : 5)));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private static int number(Matcher date, int group) {
        return Integer.parseInt(date.group(group));
    }

    private static Optional<LocalDate> serial(String text) {
        if (!text.strip().matches("\\d{5}(\\.\\d+)?")) {
            return Optional.empty();
        }
        int days = (int) Double.parseDouble(text.strip());
        return days >= FIRST_SERIAL && days <= LAST_SERIAL ? Optional.of(SERIAL_ZERO.plusDays(days)) : Optional.empty();
    }
}
