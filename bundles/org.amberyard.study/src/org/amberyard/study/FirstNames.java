package org.amberyard.study;

import java.util.List;

/** Names in a sentence: the first few, and how many more there are. */
final class FirstNames {
    private static final int SHOWN = 4;

    private FirstNames() {
    }

    static String of(List<String> names) {
        String first = String.join(", ", names.subList(0, Math.min(SHOWN, names.size())));
        return names.size() <= SHOWN ? first : first + " and " + (names.size() - SHOWN) + " more";
    }
}
