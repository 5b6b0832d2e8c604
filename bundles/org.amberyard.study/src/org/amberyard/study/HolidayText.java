package org.amberyard.study;

import java.time.DayOfWeek;
import java.time.Month;
import java.time.MonthDay;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.amberyard.core.tariff.HolidayRule;
import org.amberyard.core.tariff.Observance;

/**
 * Holidays of a tariff in a text, separated by semicolons: dates such as {@code 4 Jul}, kept on Monday where they are a Sunday,
 * and rules such as {@code 4th Thu Nov} or {@code last Mon May}. Names of months and days may be cut to three letters.
 */
final class HolidayText {
    private static final Pattern DATE = Pattern.compile("(\\d{1,2})\\s+([a-z]{3,9})");
    private static final Pattern RULE = Pattern.compile("(1st|2nd|3rd|4th|last)\\s+([a-z]{3,9})\\s+([a-z]{3,9})");
    private static final int LAST = -1;

    private HolidayText() {
    }

    /**
     * The holidays of a text; none for a blank one.
     *
     * @throws IllegalArgumentException when a part is not understood; the message names it
     */
    static List<HolidayRule> parse(String text) {
        return text == null ? List.of()
                : Arrays.stream(text.split(";")).map(String::strip).filter(p -> !p.isEmpty()).map(HolidayText::rule).toList();
    }

    private static HolidayRule rule(String part) {
        Matcher date = DATE.matcher(part.toLowerCase(Locale.ROOT));
        Matcher rule = RULE.matcher(part.toLowerCase(Locale.ROOT));
        Optional<HolidayRule> read = date.matches() ? onDate(part, date)
                : rule.matches() ? onWeekday(part, rule) : Optional.empty();
        return read.orElseThrow(() -> new IllegalArgumentException("“" + part
                + "” is no date such as 4 Jul and no rule such as 4th Thu Nov or last Mon May"));
    }

    private static Optional<HolidayRule> onDate(String part, Matcher date) {
        int day = Integer.parseInt(date.group(1));
        return named(Month.values(), date.group(2)).filter(m -> day >= 1 && day <= m.maxLength())
                .map(m -> new HolidayRule.OnDate(part, MonthDay.of(m, day), Observance.SUNDAY_ON_MONDAY));
    }

    private static Optional<HolidayRule> onWeekday(String part, Matcher rule) {
        int ordinal = rule.group(1).equals("last") ? LAST : rule.group(1).charAt(0) - '0';
        Optional<Month> month = named(Month.values(), rule.group(3));
        return named(DayOfWeek.values(), rule.group(2)).filter(d -> month.isPresent())
                .map(d -> new HolidayRule.OnWeekday(part, month.get(), d, ordinal));
    }

    private static <E extends Enum<E>> Optional<E> named(E[] choices, String name) {
        return Arrays.stream(choices).filter(c -> c.name().toLowerCase(Locale.ROOT).startsWith(name)).findFirst();
    }
}
