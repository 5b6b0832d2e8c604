package org.amberyard.core.tariff;

import java.util.Locale;

/** Times of the day in messages and labels. */
final class ClockTime {
    private ClockTime() {
    }

    /** Hours and minutes of a minute after midnight. */
    static String of(int minute) {
        return String.format(Locale.ROOT, "%02d:%02d", minute / 60, minute % 60);
    }
}
