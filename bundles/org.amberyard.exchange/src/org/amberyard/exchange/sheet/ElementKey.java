package org.amberyard.exchange.sheet;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * The name of an element as lists write it: {@code Bus 07}, {@code #7} and {@code 7} are the same bus, {@code b07} and {@code B7} too.
 *
 * @param plain the name without what differs between lists
 */
record ElementKey(String plain) {
    private static final Pattern SPACES = Pattern.compile("\\s+");
    private static final Pattern KIND = Pattern.compile("^(bus|unit|vehicle|route|rt|trip)\\s*(no\\.?|number)?\\s*#?\\s*(?=\\S)");
    private static final Pattern SIGN = Pattern.compile("^#\\s*");
    private static final Pattern ZEROS = Pattern.compile("^([a-z]*)[ -]?0+(?=\\d)");
    private static final Pattern DECIMALS = Pattern.compile("\\.0+$");

    /** The number in it, letters left out; empty where it has none. */
    String number() {
        return plain.replaceAll("\\D+", "");
    }

    static ElementKey of(String name) {
        String lower = SPACES.matcher(name.strip().toLowerCase(Locale.ROOT)).replaceAll(" ");
        String bare = SIGN.matcher(KIND.matcher(lower).replaceFirst("")).replaceFirst("");
        return new ElementKey(DECIMALS.matcher(ZEROS.matcher(bare).replaceFirst("$1")).replaceFirst(""));
    }
}
