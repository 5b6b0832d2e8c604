package org.amberyard.model.meta;

import java.util.Locale;

/** Clock times as text: {@code 6:35}. */
public final class ClockTime {
    private ClockTime() {
    }

    /** The time so many minutes after midnight. */
    public static String text(int minutes) {
        return String.format(Locale.ROOT, "%d:%02d", minutes / 60, minutes % 60);
    }
}
