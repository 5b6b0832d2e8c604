package org.amberyard.study;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.IntStream;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * Which element of an edited study is which of the study before: the one of the same name, and of those whose names are only in one of the
 * two, the ones that are most alike, which have been renamed. Where an element stands in its list says nothing.
 */
final class ElementPairs {
    /** Of so many fields of an element that was renamed, one may differ, and one in any case: its name. */
    private static final int LEAST_ALIKE = 4;

    private final Map<EObject, EObject> nowOf = new IdentityHashMap<>();

    private ElementPairs() {
    }

    static ElementPairs of(Study then, Study now) {
        ElementPairs pairs = new ElementPairs();
        pairs.pair(then, now);
        return pairs;
    }

    /** What an element has become; null where it is gone. */
    EObject now(EObject then) {
        return nowOf.get(then);
    }

    /** True when a field refers to what has become of the same elements, in the same order. */
    boolean isSame(Object then, Object now) {
        if (then instanceof List<?> before && now instanceof List<?> after) {
            return before.size() == after.size() && IntStream.range(0, before.size()).allMatch(i -> isSame(before.get(i), after.get(i)));
        }
        return then == null ? now == null : now != null && nowOf.get(then) == now;
    }

    private void pair(EObject then, EObject now) {
        nowOf.put(then, now);
        if (then.eClass() == now.eClass()) {
            then.eClass().getEAllContainments().forEach(feature -> pairHeld(then, now, feature));
        }
    }

    private void pairHeld(EObject then, EObject now, EReference feature) {
        Map<String, EObject> before = InputDifferences.held(then, feature);
        Map<String, EObject> after = InputDifferences.held(now, feature);
        before.forEach((name, element) -> {
            if (after.containsKey(name)) {
                pair(element, after.get(name));
            }
        });
        pairRenamed(before.entrySet().stream().filter(e -> !after.containsKey(e.getKey())).map(Map.Entry::getValue).toList(),
                after.entrySet().stream().filter(e -> !before.containsKey(e.getKey())).map(Map.Entry::getValue).toList());
    }

    /** Two elements that may be one. */
    private record Likeness(EObject then, EObject now, int fieldsThatDiffer) {
    }

    private void pairRenamed(List<EObject> gone, List<EObject> come) {
        List<Likeness> alike = new ArrayList<>();
        for (EObject then : gone) {
            List<EStructuralFeature> fields = plainFields(then);
            come.stream().filter(now -> now.eClass() == then.eClass()).map(now -> new Likeness(then, now, differing(then, now, fields)))
                    .filter(l -> l.fieldsThatDiffer() <= Math.max(1, fields.size() / LEAST_ALIKE)).forEach(alike::add);
        }
        alike.sort(Comparator.comparingInt(Likeness::fieldsThatDiffer));
        Set<EObject> taken = Collections.newSetFromMap(new IdentityHashMap<>());
        for (Likeness each : alike) {
            if (!nowOf.containsKey(each.then()) && taken.add(each.now())) {
                pair(each.then(), each.now());
            }
        }
    }

    private static List<EStructuralFeature> plainFields(EObject element) {
        return element.eClass().getEAllStructuralFeatures().stream().filter(f -> !InputDifferences.isContainment(f)).toList();
    }

    private static int differing(EObject then, EObject now, List<EStructuralFeature> fields) {
        return (int) fields.stream().filter(f -> !Objects.equals(told(then.eGet(f)), told(now.eGet(f)))).count();
    }

    /** A value that can be held against one of another study. */
    private static Object told(Object value) {
        return value instanceof List<?> several ? several.stream().map(ElementPairs::told).toList()
                : value instanceof EObject element ? ElementNames.of(element) : value;
    }
}
