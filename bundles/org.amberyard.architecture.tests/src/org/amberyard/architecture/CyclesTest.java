package org.amberyard.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Packages of a bundle do not use each other in circles. */
class CyclesTest {
    @Test
    void noPackagesUseEachOtherInCircles() {
        Map<String, Set<String>> found = new TreeMap<>();
        for (String bundle : Sources.PRODUCT) {
            Set<String> circles = circles(uses(bundle));
            if (!circles.isEmpty()) {
                found.put(bundle, circles);
            }
        }
        assertEquals(Map.of(), found);
    }

    @Test
    void circlesAreFound() {
        assertEquals(Set.of("a, b, c"), circles(Map.of("a", Set.of("b"), "b", Set.of("c"), "c", Set.of("a", "d"), "d", Set.of())));
    }

    private static Map<String, Set<String>> uses(String bundle) {
        List<SourceFile> files = Sources.ofBundle(bundle);
        Set<String> own = files.stream().map(SourceFile::packageName).collect(Collectors.toSet());
        Map<String, Set<String>> uses = new TreeMap<>();
        for (SourceFile file : files) {
            Set<String> used = uses.computeIfAbsent(file.packageName(), name -> new TreeSet<>());
            file.packagesUsed().stream().filter(own::contains).forEach(used::add);
        }
        return uses;
    }

    /** Packages that reach each other stand in one circle. */
    private static Set<String> circles(Map<String, Set<String>> uses) {
        Map<String, Set<String>> reached = new TreeMap<>();
        uses.keySet().forEach(name -> reached.put(name, reachedFrom(name, uses)));
        return uses.keySet().stream()
                .map(name -> reached.get(name).stream().filter(other -> reached.get(other).contains(name))
                        .collect(Collectors.joining(", ")))
                .filter(circle -> !circle.isEmpty()).collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> reachedFrom(String name, Map<String, Set<String>> uses) {
        Set<String> reached = new TreeSet<>();
        uses.get(name).forEach(used -> reach(used, uses, reached));
        return reached;
    }

    private static void reach(String name, Map<String, Set<String>> uses, Set<String> reached) {
        if (reached.add(name)) {
            uses.get(name).forEach(used -> reach(used, uses, reached));
        }
    }
}
