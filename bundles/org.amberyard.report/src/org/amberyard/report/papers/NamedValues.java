package org.amberyard.report.papers;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Values by what they are of; those of the same name are told apart by their order. */
final class NamedValues {
    private final Map<String, String> values = new LinkedHashMap<>();

    void put(String name, String value) {
        String unique = name;
        for (int i = 2; values.containsKey(unique); i++) {
            unique = name + " no. " + i;
        }
        values.put(unique, value);
    }

    /** What has changed, came or went, in words. */
    static List<String> different(NamedValues before, NamedValues now) {
        List<String> lines = new ArrayList<>();
        Set<String> names = new LinkedHashSet<>(before.values.keySet());
        names.addAll(now.values.keySet());
        for (String name : names) {
            if (!now.values.containsKey(name)) {
                lines.add(name + ": " + shown(before.values.get(name)) + ", now gone");
            } else if (!before.values.containsKey(name)) {
                lines.add(name + ": new, " + shown(now.values.get(name)));
            } else if (!before.values.get(name).equals(now.values.get(name))) {
                lines.add(name + ": " + change(before.values.get(name), now.values.get(name)));
            }
        }
        return lines;
    }

    /** A value as it was and is. */
    static String change(String before, String now) {
        return shown(before) + " → " + shown(now);
    }

    private static String shown(String value) {
        return value.isEmpty() ? "empty" : value;
    }
}
