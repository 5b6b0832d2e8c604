package org.amberyard.report;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.amberyard.core.charging.ChargeSpan;
import org.amberyard.core.duty.DayBlock;

/** Moments of a stretch of days in words. */
final class ClockWords {
    private ClockWords() {
    }

    /** Words such as {@code 21:15}, {@code 06:30 next day} or {@code 06:30 after 3 days}; whole minutes. */
    static String of(double minute) {
        long whole = Math.round(minute);
        long day = (long) DayBlock.DAY_MIN;
        String time = String.format(Locale.ROOT, "%02d:%02d", whole % day / 60, whole % 60);
        long days = whole / day;
        return days == 0 ? time : time + (days == 1 ? " next day" : " after " + days + " days");
    }

    static String of(List<ChargeSpan> spans) {
        return spans.isEmpty() ? "not at all"
                : spans.stream().map(s -> of(s.fromMin()) + " to " + of(s.toMin())).collect(Collectors.joining(", "));
    }
}
