package org.amberyard.report.papers;

import java.util.regex.Pattern;

/**
 * How sources are told to readers outside of the study, such as agencies, boards and utilities. What the program and its example
 * note in short is said as such readers expect it; citations stay as they are. Files for programs, such as the register of all
 * inputs, keep what was noted.
 */
final class SourceWords {
    /** Where nobody has published a figure or rule. */
    static final String ASSUMED = "assumed; no published source";
    private static final String RECALLED = "recalled; to be verified before submission";
    private static final String INVENTED = "invented for this example";
    private static final Pattern NO_SOURCE = Pattern.compile("(?:assumed[;,] )?common practice, no source|assumed, no source");
    private static final Pattern FROM_MEMORY = Pattern.compile("\\bfrom memory\\b");
    /** The mark of the example behind what it cites. */
    private static final Pattern MADE_UP = Pattern.compile("(?<=\\(|^)invented(?=\\)|$)");

    private SourceWords() {
    }

    /** A source as noted, in such words; null and empty stay so. */
    static String of(String noted) {
        if (noted == null) {
            return null;
        }
        String told = NO_SOURCE.matcher(noted).replaceAll(ASSUMED);
        return MADE_UP.matcher(FROM_MEMORY.matcher(told).replaceAll(RECALLED)).replaceAll(INVENTED);
    }
}
