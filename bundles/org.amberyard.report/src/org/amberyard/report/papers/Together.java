package org.amberyard.report.papers;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Lines that have all but one thing in common, which is said of each in turn.
 *
 * @param key what they have in common
 * @param words what is said of each
 */
record Together(List<String> key, String words) {

    static List<Together> of(Stream<ResultLine> lines, Function<ResultLine, List<String>> key, Function<ResultLine, String> word) {
        return lines.collect(Collectors.groupingBy(key, LinkedHashMap::new, Collectors.mapping(word, Collectors.joining("; "))))
                .entrySet().stream().map(e -> new Together(e.getKey(), e.getValue())).toList();
    }

    String key(int place) {
        return key.get(place);
    }
}
