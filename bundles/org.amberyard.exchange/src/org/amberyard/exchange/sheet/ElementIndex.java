package org.amberyard.exchange.sheet;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.study.NearWords;
import org.eclipse.emf.ecore.EObject;

/** Elements as they were when it was made, found by what lists call them. */
final class ElementIndex<T extends EObject> {
    private static final int LISTED = 8;

    private final List<T> elements;
    private final Map<ElementKey, Optional<T>> byKey = new HashMap<>();
    private final Map<String, Optional<T>> byNumber = new HashMap<>();

    ElementIndex(Collection<T> elements) {
        this.elements = List.copyOf(elements);
        for (T element : this.elements) {
            ElementKey key = ElementKey.of(ElementNames.of(element));
            byKey.merge(key, Optional.of(element), (one, other) -> Optional.empty());
            byNumber.merge(key.number(), Optional.of(element), (one, other) -> Optional.empty());
        }
    }

    /** The element of a name; empty where there is none, or more than one. */
    Optional<T> find(String name) {
        return byKey.getOrDefault(ElementKey.of(name), Optional.empty());
    }

    /** The element whose name has the same number but other letters; empty where there is none, or more than one. */
    Optional<T> withNumberOf(String name) {
        String number = ElementKey.of(name).number();
        return number.isEmpty() ? Optional.empty() : byNumber.getOrDefault(number, Optional.empty());
    }

    boolean isEmpty() {
        return elements.isEmpty();
    }

    /**
     * What to say of a name that is none of them: what is near it, and which there are.
     *
     * @param kind what they are, within a sentence
     */
    String unknown(String name, String kind) {
        if (elements.isEmpty()) {
            return "“" + name + "” is no " + kind + " of the study, which has none; add it there first.";
        }
        return "“" + name + "” is no " + kind + " of the study; it has " + names() + "."
                + NearWords.hint(name, elements.stream().map(ElementNames::of).toList());
    }

    /** Names for a message. */
    String names() {
        return names(elements);
    }

    /** Names of some elements for a message. */
    static String names(Collection<? extends EObject> elements) {
        String first = elements.stream().limit(LISTED).map(ElementNames::of).collect(Collectors.joining(", "));
        return elements.size() <= LISTED ? first : first + " and " + (elements.size() - LISTED) + " more";
    }
}
