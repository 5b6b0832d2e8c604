package org.amberyard.study;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Clock times as route sheets write them: 6:35, 06:35, 6:35a, 2:05 pm. */
public final class ClockText {
    private static final Pattern TIME = Pattern.compile("(\\d{1,2}):(\\d{2})\\s*(a|am|p|pm)?");
    private static final int NOON_HOUR = 12;

    private ClockText() {
    }

    /** Minutes after midnight, or empty when the text is no clock time. */
    public static Optional<Integer> minutes(String text) {
        Matcher time = TIME.matcher(text.toLowerCase(Locale.ROOT).replace(".", ""));
        if (!time.matches()) {
            return Optional.empty();
        }
        int hour = Integer.parseInt(time.group(1));
        int minute = Integer.parseInt(time.group(2));
        boolean twelveHour = time.group(3) != null;
        if (minute > 59 || hour > 23 || twelveHour && (hour < 1 || hour > NOON_HOUR)) {
            return Optional.empty();
        }
        int hourOfDay = twelveHour ? hour % NOON_HOUR + (time.group(3).startsWith("p") ? NOON_HOUR : 0) : hour;
        return Optional.of(hourOfDay * 60 + minute);
    }
}
