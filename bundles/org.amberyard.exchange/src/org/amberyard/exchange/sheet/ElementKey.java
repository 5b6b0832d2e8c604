package org.amberyard.exchange.sheet;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.amberyard.model.meta.ElementNames;
import org.eclipse.emf.ecore.EObject;

/**
 * The name of an element as lists write it: {@code Bus 07}, {@code #7} and {@code 7} are the same bus, {@code b07} and {@code B7} too.
 *
 * @param plain the name without what differs between lists
 */
record ElementKey(String plain) {
    private static final int LISTED = 8;

    static ElementKey of(String name) {
        String lower = name.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        String bare = lower.replaceFirst("^(bus|unit|vehicle|route|rt|trip)\\s*(no\\.?|number)?\\s*#?\\s*(?=\\S)", "").replaceFirst("^#\\s*", "");
        return new ElementKey(bare.replaceFirst("^([a-z]*)[ -]?0+(?=\\d)", "$1").replaceFirst("\\.0+$", ""));
    }

    /** The element of that name among some, if there is just one. */
    <T extends EObject> Optional<T> among(Collection<T> elements) {
        List<T> named = elements.stream().filter(e -> of(ElementNames.of(e)).equals(this)).toList();
        return named.size() == 1 ? Optional.of(named.get(0)) : Optional.empty();
    }

    /** Names for a message. */
    static String names(Collection<? extends EObject> elements) {
        String first = elements.stream().limit(LISTED).map(ElementNames::of).collect(Collectors.joining(", "));
        return elements.size() <= LISTED ? first : first + " and " + (elements.size() - LISTED) + " more";
    }
}
