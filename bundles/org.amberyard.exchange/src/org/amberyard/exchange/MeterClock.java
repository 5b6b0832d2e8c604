package org.amberyard.exchange;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the dates and times of a meter's file: 2025-07-01 00:15, 7/1/2025 12:15 AM, 01.07.2025 0:15; 24:00 ends a day. */
final class MeterClock {
    static final String EXAMPLES = "2025-07-01 00:15 or 7/1/2025 12:15 AM";

    private static final Pattern DATE = Pattern.compile("(\\d{4})-(\\d{1,2})-(\\d{1,2})|(\\d{1,2})[/.](\\d{1,2})[/.](\\d{4})");
    private static final Pattern TIME = Pattern.compile("(\\d{1,2}):(\\d{2})(?::00(?:\\.0+)?)?\\s*(am|pm)?");
    private static final int NOON_HOUR = 12;
    private static final int DAY_MIN = 1440;

    private final boolean dayFirst;

    private MeterClock(boolean dayFirst) {
        this.dayFirst = dayFirst;
    }

    /** The clock of a file: days stand before months when a first number is above 12, or when points part them. */
    static MeterClock of(List<String> texts) {
        return new MeterClock(texts.stream().map(t -> DATE.matcher(t.strip())).filter(Matcher::lookingAt)
                .anyMatch(d -> d.group(4) != null && (Integer.parseInt(d.group(4)) > 12 || d.group().contains("."))));
    }

    /** The moment in a text of date and time; empty when it is none. */
    Optional<LocalDateTime> moment(String text) {
        Matcher date = DATE.matcher(text.strip());
        if (!date.lookingAt()) {
            return Optional.empty();
        }
        String time = text.strip().substring(date.end()).replaceFirst("^[T\\s]+", "");
        return date(date).flatMap(d -> minutes(time).map(m -> d.atStartOfDay().plusMinutes(m)));
    }

    /** The date in a text; empty when it is none. */
    Optional<LocalDate> date(String text) {
        Matcher date = DATE.matcher(text.strip());
        return date.matches() ? date(date) : Optional.empty();
    }

    private Optional<LocalDate> date(Matcher date) {
        try {
            if (date.group(1) != null) {
                return Optional.of(LocalDate.of(number(date, 1), number(date, 2), number(date, 3)));
            }
            return Optional.of(LocalDate.of(number(date, 6), number(date, dayFirst ? 5 : 4), number(date, dayFirst ? 4 : 5)));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private static int number(Matcher date, int group) {
        return Integer.parseInt(date.group(group));
    }

    /** Minutes after midnight of a clock time, up to 24:00; empty when it is none. */
    static Optional<Integer> minutes(String text) {
        Matcher time = TIME.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!time.matches()) {
            return Optional.empty();
        }
        int hour = Integer.parseInt(time.group(1));
        int minute = Integer.parseInt(time.group(2));
        boolean twelveHour = time.group(3) != null;
        int hourOfDay = twelveHour ? hour % NOON_HOUR + (time.group(3).equals("pm") ? NOON_HOUR : 0) : hour;
        int minutes = hourOfDay * 60 + minute;
        boolean sound = minute < 60 && minutes <= DAY_MIN && (!twelveHour || hour >= 1 && hour <= NOON_HOUR);
        return sound ? Optional.of(minutes) : Optional.empty();
    }
}
