package org.amberyard.exchange.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.amberyard.model.common.Month;
import org.amberyard.model.depot.TariffDays;
import org.amberyard.study.ClockText;

/** Months, days and hours as tariff sheets write them: {@code Jun–Sep}, {@code Mon-Fri}, {@code 2 pm to 8 pm}. */
final class TariffTimes {
    private static final Pattern WORD = Pattern.compile("\\p{L}+");
    private static final Pattern CLOCK = Pattern.compile("(\\d{1,2})(?::(\\d{2}))?\\s*([ap])?\\.?(?:m\\.?)?");
    private static final Pattern BETWEEN = Pattern.compile("\\s*(?:-|\u2013|\u2014|\\bto\\b|\\buntil\\b|\\bthrough\\b)\\s*");
    private static final int SHORTEST = 3;
    private static final int DAY_MIN = 1440;
    private static final int NOON_HOUR = 12;
    private static final List<String> ALWAYS = List.of("all", "all hours", "all day", "24 h", "24 hours", "any", "every hour", "at all times");
    private static final List<String> WHOLE_YEAR = List.of("all", "all year", "year-round", "year round", "annual", "every month", "all months");
    private static final Map<String, TariffDays> DAYS = Map.ofEntries(Map.entry("all", TariffDays.ALL), Map.entry("all days", TariffDays.ALL),
            Map.entry("daily", TariffDays.ALL), Map.entry("any", TariffDays.ALL), Map.entry("everyday", TariffDays.ALL),
            Map.entry("mon-fri", TariffDays.WEEKDAYS), Map.entry("monday-friday", TariffDays.WEEKDAYS), Map.entry("weekday", TariffDays.WEEKDAYS),
            Map.entry("m-f", TariffDays.WEEKDAYS), Map.entry("mon-sat", TariffDays.WEEKDAYS_AND_SATURDAYS), Map.entry("saturday", TariffDays.SATURDAYS),
            Map.entry("sat", TariffDays.SATURDAYS), Map.entry("sunday", TariffDays.SUNDAYS_AND_HOLIDAYS),
            Map.entry("sundays", TariffDays.SUNDAYS_AND_HOLIDAYS), Map.entry("sun", TariffDays.SUNDAYS_AND_HOLIDAYS),
            Map.entry("weekend", TariffDays.WEEKENDS_AND_HOLIDAYS), Map.entry("weekends", TariffDays.WEEKENDS_AND_HOLIDAYS),
            Map.entry("sat-sun", TariffDays.WEEKENDS_AND_HOLIDAYS));

    private TariffTimes() {
    }

    /**
     * First and last of a season, or hours from and to.
     *
     * @param first the first
     * @param last the last
     */
    record Span<T>(T first, T last) {
    }

    /** The months of a season that names them; empty for one that does not. */
    static Optional<Span<Month>> season(String text) {
        if (WHOLE_YEAR.contains(text.strip().toLowerCase(Locale.ROOT))) {
            return Optional.of(new Span<>(Month.JANUARY, Month.DECEMBER));
        }
        List<Month> named = new ArrayList<>();
        Matcher words = WORD.matcher(text);
        while (words.find()) {
            month(words.group()).ifPresent(named::add);
        }
        return named.isEmpty() || named.size() > 2 ? Optional.empty() : Optional.of(new Span<>(named.get(0), named.get(named.size() - 1)));
    }

    /** The month of a name, which may be shortened. */
    static Optional<Month> month(String text) {
        String small = text.strip().toLowerCase(Locale.ROOT).replace(".", "");
        return small.length() < SHORTEST ? Optional.empty()
                : Month.VALUES.stream().filter(m -> m.getLiteral().toLowerCase(Locale.ROOT).startsWith(small)).findFirst();
    }

    /** The days of a word that is none of the model's own; empty for others. */
    static Optional<TariffDays> days(String text) {
        String small = BETWEEN.matcher(text.strip().toLowerCase(Locale.ROOT)).replaceAll("-");
        return Optional.ofNullable(DAYS.get(small));
    }

    /** Minutes after midnight from and to; equal for the whole day. Empty for other words. */
    static Optional<Span<Integer>> hours(String text) {
        String small = text.strip().toLowerCase(Locale.ROOT).replace("noon", "12:00").replace("midnight", "24:00");
        if (ALWAYS.contains(small)) {
            return Optional.of(new Span<>(0, 0));
        }
        String[] ends = BETWEEN.split(small);
        if (ends.length != 2) {
            return Optional.empty();
        }
        Optional<Integer> to = isUntold(ends) ? Optional.empty() : minutes(ends[1], "");
        Optional<Integer> from = to.flatMap(end -> start(ends, end));
        return from.map(start -> new Span<>(start % DAY_MIN, to.get() % DAY_MIN));
    }

    /** True for an end that may be in either half of the day, where the start names its own. */
    private static boolean isUntold(String[] ends) {
        Matcher end = CLOCK.matcher(ends[1]);
        return !half(ends[0]).isEmpty() && end.matches() && end.group(3) == null && Integer.parseInt(end.group(1)) < NOON_HOUR;
    }

    /**
     * The start of hours; one without a half of the day is in that of the end, and in the other half where it would not come before
     * the end: 9-5 pm is 9 am to 5 pm. Equal times tell neither.
     */
    private static Optional<Integer> start(String[] ends, int end) {
        Optional<Integer> near = minutes(ends[0], half(ends[1]));
        boolean borrowed = half(ends[0]).isEmpty() && !half(ends[1]).isEmpty();
        if (!borrowed || near.isEmpty() || near.get() < end) {
            return near;
        }
        return near.get() == end ? Optional.empty() : minutes(ends[0], half(ends[1]).equals("p") ? "a" : "p");
    }

    /** The half of the day that a time names: a or p, empty for none. */
    private static String half(String time) {
        Matcher clock = CLOCK.matcher(time);
        return clock.matches() && clock.group(3) != null ? clock.group(3) : "";
    }

    /** Minutes after midnight, where 24:00 is the end of the day; a time without a half of the day takes that of the other end. */
    private static Optional<Integer> minutes(String time, String otherHalf) {
        Matcher clock = CLOCK.matcher(time);
        if (!clock.matches()) {
            return Optional.empty();
        }
        String minute = clock.group(2) == null ? "00" : clock.group(2);
        if (clock.group(1).equals("24")) {
            return minute.equals("00") ? Optional.of(DAY_MIN) : Optional.empty();
        }
        return ClockText.minutes(clock.group(1) + ":" + minute + (clock.group(3) == null ? otherHalf : clock.group(3)));
    }
}
