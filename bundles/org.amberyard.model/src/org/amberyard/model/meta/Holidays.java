package org.amberyard.model.meta;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Holidays in a text, separated by semicolons: dates such as {@code 4 Jul}, and rules such as {@code 4th Thu Nov} or
 * {@code last Mon May}. Names of months and days may be cut to three letters.
 */
public final class Holidays {
    private static final Pattern DATE = Pattern.compile("(\\d{1,2})\\s+([a-z]{3,9})");
    private static final Pattern RULE = Pattern.compile("(1st|2nd|3rd|4th|last)\\s+([a-z]{3,9})\\s+([a-z]{3,9})");
    private static final int LAST = -1;

    private final List<IntFunction<LocalDate>> rules;

    private Holidays(List<IntFunction<LocalDate>> rules) {
        this.rules = rules;
    }

    /**
     * The holidays of a text; none for a blank one.
     *
     * @throws IllegalArgumentException when a part is not understood; the message names it
     */
    public static Holidays parse(String text) {
        List<IntFunction<LocalDate>> rules = new ArrayList<>();
        for (String part : text == null ? new String[0] : text.split(";")) {
            if (!part.isBlank()) {
                rules.add(rule(part.strip()));
            }
        }
        return new Holidays(List.copyOf(rules));
    }

    /** Dates of a year. */
    public Set<LocalDate> of(int year) {
        Set<LocalDate> dates = new TreeSet<>();
        rules.forEach(r -> dates.add(r.apply(year)));
        return dates;
    }

    private static IntFunction<LocalDate> rule(String part) {
        Matcher date = DATE.matcher(part.toLowerCase(Locale.ROOT));
        Matcher rule = RULE.matcher(part.toLowerCase(Locale.ROOT));
        Optional<IntFunction<LocalDate>> read = date.matches() ? onDate(date) : rule.matches() ? onWeekday(rule) : Optional.empty();
        return read.orElseThrow(() -> new IllegalArgumentException("“" + part
                + "” is no date such as 4 Jul and no rule such as 4th Thu Nov or last Mon May"));
    }

    private static Optional<IntFunction<LocalDate>> onDate(Matcher date) {
        int day = Integer.parseInt(date.group(1));
        return named(Month.values(), date.group(2)).filter(m -> day >= 1 && day <= m.maxLength())
                .map(m -> year -> LocalDate.of(year, m, Math.min(day, m.length(LocalDate.of(year, 1, 1).isLeapYear()))));
    }

    private static Optional<IntFunction<LocalDate>> onWeekday(Matcher rule) {
        int ordinal = rule.group(1).equals("last") ? LAST : rule.group(1).charAt(0) - '0';
        Optional<DayOfWeek> day = named(DayOfWeek.values(), rule.group(2));
        return named(Month.values(), rule.group(3)).filter(m -> day.isPresent()).map(m -> year -> LocalDate.of(year, m, 1)
                .with(TemporalAdjusters.dayOfWeekInMonth(ordinal, day.get())));
    }

    private static <E extends Enum<E>> Optional<E> named(E[] choices, String name) {
        return Arrays.stream(choices).filter(c -> c.name().toLowerCase(Locale.ROOT).startsWith(name))
                .findFirst();
    }
}
