package org.amberyard.exchange.sheet;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Dates of one column: 2025-09-04, 9/4/2025, 9/4/25, 04.09.2025, each with or without a time behind it. A number above 12 shows whether
 * days or months come first; where there is none, days do where points part them, else months.
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

    private final List<Matcher> dates;
    private final Optional<String> showsDay;
    private final Optional<String> showsMonth;
    private final boolean dayFirst;

    SheetDates(Stream<String> texts) {
        dates = texts.map(t -> DATE.matcher(t.strip())).filter(Matcher::matches).filter(d -> d.group(4) != null).toList();
        showsDay = dates.stream().filter(d -> number(d, 4) > MOST_MONTHS && number(d, 5) <= MOST_MONTHS).map(Matcher::group).findFirst();
        showsMonth = dates.stream().filter(d -> number(d, 5) > MOST_MONTHS && number(d, 4) <= MOST_MONTHS).map(Matcher::group).findFirst();
        dayFirst = showsDay.isPresent() || showsMonth.isEmpty() && dates.stream().anyMatch(SheetDates::isDotted);
    }

    private static boolean isDotted(Matcher date) {
        return date.group().charAt(date.end(4)) == '.';
    }

    /** Which comes first, and what shows it, in words; empty where no date would be another one the other way round. */
    Optional<String> order() {
        if (dates.stream().noneMatch(d -> number(d, 4) <= MOST_MONTHS && number(d, 5) <= MOST_MONTHS && number(d, 4) != number(d, 5))) {
            return Optional.empty();
        }
        String shown = (dayFirst ? showsDay : showsMonth).map(d -> ", as “" + d + "” shows")
                .orElse(dayFirst ? ", because points part them" : "; none shows which comes first");
        return Optional.of("with the " + (dayFirst ? "day" : "month") + " first" + shown);
    }

    /** A date that can only have the day first and one that can only have the month first, in words; empty where not both stand there. */
    Optional<String> mixture() {
        return showsDay.flatMap(day -> showsMonth.map(month -> "“" + day + "” has the day first, “" + month + "” the month"));
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
