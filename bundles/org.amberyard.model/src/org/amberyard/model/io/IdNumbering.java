package org.amberyard.model.io;

import java.util.Collection;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.emf.ecore.EClass;

/** Hands out ids such as {@code port-type-3}; each kind counts on from the highest number in use. */
final class IdNumbering {
    private static final Pattern ID = Pattern.compile("([a-z-]+)-(\\d{1,9})");

    private final Map<String, Integer> highest = new HashMap<>();

    IdNumbering(Collection<String> used) {
        used.forEach(this::note);
    }

    private void note(String id) {
        Matcher matcher = ID.matcher(id);
        if (matcher.matches()) {
            highest.merge(matcher.group(1), Integer.valueOf(matcher.group(2)), Math::max);
        }
    }

    String next(EClass type) {
        String kind = type.getName().replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
        return kind + "-" + highest.merge(kind, 1, Integer::sum);
    }
}
