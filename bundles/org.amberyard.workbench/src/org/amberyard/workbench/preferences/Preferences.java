package org.amberyard.workbench.preferences;

import java.util.List;
import java.util.Optional;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;

/**
 * The user's own settings, kept by the platform from one run to the next. What stands there and is not allowed counts as not set.
 * Settings of a study, such as its units, are no part of them; here stands only what a new study begins with.
 */
public enum Preferences {
    /** Language of the window; read at start. */
    LANGUAGE("language", "system", List.of("system", "en", "es")),
    /** How numbers are written. */
    NUMBERS("numbers", "system", List.of("system", "point", "comma", "space")),
    /** Light or dark window. */
    THEME("theme", "light", List.of("light", "dark", "system")),
    /** Colours of charts. */
    COLOURS("chartColours", "usual", List.of("usual", "strong")),
    /** Longest time in seconds that an edit lives in memory only. */
    KEPT_AFTER_S("keptAfterSeconds", "10", List.of("2", "5", "10", "30", "60")),
    /** Units of a new study, by the names of the model. */
    UNITS("units", "US", List.of("US", "METRIC")),
    /** Currency of a new study; any short text. */
    CURRENCY("currency", "USD", List.of()),
    /** Month in which the fiscal year of a new study starts, 1 to 12. */
    FISCAL_YEAR_START("fiscalYearStart", "1", List.of("1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "12"));

    /** The node of the platform's preferences in which they stand. */
    public static final String NODE = "org.amberyard.workbench";

    private final String key;
    private final String usual;
    private final List<String> choices;

    Preferences(String key, String usual, List<String> choices) {
        this.key = key;
        this.usual = usual;
        this.choices = choices;
    }

    private static IEclipsePreferences node() {
        return InstanceScope.INSTANCE.getNode(NODE);
    }

    /** What is set. */
    public String get() {
        return Optional.of(node().get(key, usual)).filter(this::allows).orElse(usual);
    }

    /** What is set, as a whole number. */
    public int number() {
        return Integer.parseInt(get());
    }

    /** What can be set; empty for any short text. */
    public List<String> choices() {
        return choices;
    }

    private boolean allows(String value) {
        return choices.isEmpty() ? !value.isBlank() : choices.contains(value);
    }

    /**
     * Sets and keeps it.
     *
     * @throws IllegalArgumentException when it is not one of the choices, or blank
     */
    public void set(String value) {
        if (!allows(value)) {
            throw new IllegalArgumentException(key + " cannot be “" + value + "”" + (choices.isEmpty() ? "" : "; allowed are " + choices));
        }
        node().put(key, value);
        try {
            node().flush();
        } catch (BackingStoreException e) {
            // It holds for this run, and is as before in the next.
            ILog.of(Preferences.class).warn(e.getMessage(), e);
        }
    }
}
