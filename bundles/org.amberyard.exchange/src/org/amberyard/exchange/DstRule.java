package org.amberyard.exchange;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.YearMonth;
import java.time.temporal.TemporalAdjusters;
import java.util.Optional;

/**
 * When in a year daylight saving begins or ends: the bit field of the Energy Services Provider Interface. Bits 0 to 11 are
 * seconds of the hour, 12 to 16 the hour, 17 to 19 the day of the week with Monday 1, 20 to 24 the day of the month, 25 to 27
 * how the day is found, 28 to 31 the month. The layout is from memory; it agrees with what public code quotes of the standard.
 *
 * @param month month, 1 to 12
 * @param way how the day is found: 0 day of the month, 1 day of the week on or after it, 2 to 6 first to fifth day of the week
 *     of the month, 7 the last
 * @param day day of the month; 0 where the way needs none
 * @param weekday day of the week, Monday 1; 0 where the way needs none
 * @param second second of the day on the clock before the change
 */
record DstRule(int month, int way, int day, int weekday, int second) {
    private static final int HEX_DIGITS = 8;
    private static final int LAST = 7;

    /** The rule in a text of eight hexadecimal digits; empty when it is none. */
    static Optional<DstRule> of(String text) {
        if (!text.matches("[0-9A-Fa-f]{" + HEX_DIGITS + "}")) {
            return Optional.empty();
        }
        int bits = Integer.parseUnsignedInt(text, 16);
        DstRule rule = new DstRule(bits >>> 28, bits >>> 25 & 7, bits >>> 20 & 31, bits >>> 17 & 7,
                (bits >>> 12 & 31) * 3600 + (bits & 0xfff));
        return Optional.of(rule).filter(DstRule::isSound);
    }

    private boolean isSound() {
        boolean dayFits = way > 1 || day >= 1;
        boolean weekdayFits = way == 0 || weekday >= 1;
        return month >= 1 && month <= 12 && dayFits && weekdayFits && second < 24 * 3600;
    }

    /** The moment of the change in a year, on the clock before it. */
    LocalDateTime moment(int year) {
        return date(YearMonth.of(year, month)).atStartOfDay().plusSeconds(second);
    }

    private LocalDate date(YearMonth of) {
        LocalDate first = of.atDay(Math.min(Math.max(day, 1), of.lengthOfMonth()));
        if (way == 0) {
            return first;
        }
        DayOfWeek wanted = DayOfWeek.of(weekday);
        return switch (way) {
            case 1 -> first.with(TemporalAdjusters.nextOrSame(wanted));
            case LAST -> of.atDay(1).with(TemporalAdjusters.lastInMonth(wanted));
            default -> of.atDay(1).with(TemporalAdjusters.dayOfWeekInMonth(way - 1, wanted));
        };
    }
}
