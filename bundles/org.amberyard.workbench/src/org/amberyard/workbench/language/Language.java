package org.amberyard.workbench.language;

import java.util.Arrays;
import java.util.Locale;
import org.amberyard.workbench.preferences.Preferences;

/**
 * The language of the window. It is kept among the preferences, from where the start script hands it to the platform, which has read
 * its texts before the program runs; another one is therefore seen from the next start on.
 */
public enum Language {
    /** As the system speaks. */
    SYSTEM("system"),
    /** English, whatever the system. */
    ENGLISH("en"),
    /** Spanish, whatever the system. */
    SPANISH("es");

    private static final String LATIN_DIGITS = "-u-nu-latn";

    private final String code;

    Language(String code) {
        this.code = code;
    }

    /** Code in the preferences, of ISO 639 but for the system's. */
    public String code() {
        return code;
    }

    /** The language of the next run. */
    public static Language chosen() {
        String kept = Preferences.LANGUAGE.get();
        return Arrays.stream(values()).filter(l -> l.code.equals(kept)).findFirst().orElseThrow();
    }

    /** Chooses the language of the next run. */
    public static void choose(Language language) {
        Preferences.LANGUAGE.set(language.code);
    }

    /** True when the window speaks it now. */
    public boolean isShown() {
        return spoken(this == SYSTEM ? system() : code).equals(spoken(Locale.getDefault().getLanguage()));
    }

    /** True when whoever started the program starts it again if asked to, as the start scripts of Linux and macOS do. */
    public static boolean canRestart() {
        return Boolean.getBoolean("org.amberyard.restarts");
    }

    /** What is spoken where a language is asked for: Spanish where it is that, else English. */
    private static String spoken(String language) {
        return SPANISH.code.equals(language) ? language : ENGLISH.code;
    }

    /**
     * Lets numbers be written as in the system whatever language is spoken: the platform, told a language, would take the numbers of
     * Spain for those of a Spanish speaker in the United States. Digits are those of the language that is spoken, with the signs that
     * go with them: what is typed is read in these alone.
     */
    public static void keepNumbersOfSystem() {
        String system = new Locale(property("user.language", system()), property("user.country", "")).toLanguageTag();
        Locale.setDefault(Locale.Category.FORMAT, Locale.forLanguageTag(system + LATIN_DIGITS));
    }

    private static String property(String name, String otherwise) {
        return System.getProperty(name + ".format", System.getProperty(name, otherwise));
    }

    private static String system() {
        return System.getProperty("user.language", ENGLISH.code);
    }
}
