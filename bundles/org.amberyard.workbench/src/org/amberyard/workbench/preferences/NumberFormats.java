package org.amberyard.workbench.preferences;

import java.util.Locale;

/** Writes numbers in the window the way that the user has chosen. Files do not depend on it. */
public final class NumberFormats {
    private static final Locale SYSTEM = Locale.getDefault(Locale.Category.FORMAT);

    private NumberFormats() {
    }

    /** Uses the way that is set from now on. */
    public static void use() {
        Locale.setDefault(Locale.Category.FORMAT, of(Preferences.NUMBERS.get()));
    }

    /** The locale that writes numbers so. */
    public static Locale of(String choice) {
        return switch (choice) {
            case "point" -> Locale.US;
            case "comma" -> Locale.GERMANY;
            case "space" -> Locale.FRANCE;
            default -> SYSTEM;
        };
    }
}
