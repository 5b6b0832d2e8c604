package org.amberyard.study;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/** Places of elements in a list: how core inputs refer to each other. */
final class Places<T> {
    private final Map<T, Integer> places = new IdentityHashMap<>();

    Places(List<T> elements) {
        for (int i = 0; i < elements.size(); i++) {
            places.put(elements.get(i), i);
        }
    }

    /** Place of an element that must be there. */
    int of(T element) {
        return ofOptional(element).orElseThrow(() -> new IllegalArgumentException(element + " is not part of the study"));
    }

    /** Place of an element; empty for none. */
    OptionalInt ofOptional(T element) {
        Integer place = element == null ? null : places.get(element);
        return place == null ? OptionalInt.empty() : OptionalInt.of(place);
    }
}
