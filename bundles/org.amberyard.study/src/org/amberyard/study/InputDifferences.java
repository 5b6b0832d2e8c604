package org.amberyard.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.amberyard.model.common.SourceNote;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.meta.SourceNotes;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Inputs in which elements of the same kind differ, field by field: plans of a study, or whole studies. What they hold is
 * matched by name, and where names repeat by place among its namesakes.
 */
public final class InputDifferences {

    /**
     * An input that is not the same in all.
     *
     * @param element the element that holds it, with its kind; blank for what is compared itself
     * @param field its label; blank where not all have the element
     * @param values its values with their units, in the order of what is compared
     */
    public record Difference(String element, String field, List<String> values) {
        public Difference {
            values = List.copyOf(values);
        }

        /** True when it is the element itself that not all have. */
        public boolean isWhole() {
            return field.isEmpty() && values.stream().allMatch(v -> v.equals(HAS) || v.equals(HAS_NOT));
        }

        /** True when one of what is compared has the element. */
        public boolean has(int place) {
            return values.get(place).equals(HAS);
        }
    }

    private static final String HAS = "yes";
    private static final String HAS_NOT = "no";

    private final Study units;
    /** Of a study before and after edits; empty where each is a study of its own. */
    private final Optional<ElementPairs> pairs;
    private final Predicate<EStructuralFeature> counts;
    private final List<Difference> found = new ArrayList<>();

    private InputDifferences(Study units, Optional<ElementPairs> pairs, Predicate<EStructuralFeature> counts) {
        this.units = units;
        this.pairs = pairs;
        this.counts = counts;
    }

    /**
     * The differences, in the order of the model; to be called where the elements may be read.
     *
     * @param elements what is compared; all of one kind
     * @param units study in whose units values are given
     */
    public static List<Difference> of(List<? extends EObject> elements, Study units) {
        return new InputDifferences(units, Optional.empty(), feature -> true).of(elements);
    }

    /**
     * What edits have made of a study, counted as edits are: the source of a value is part of the change of the value, and an element that has
     * got another name is one change wherever it is named.
     *
     * @param counts fields that are of interest
     */
    public static List<Difference> ofEdits(Study then, Study now, Predicate<EStructuralFeature> counts) {
        return new InputDifferences(now, Optional.of(ElementPairs.of(then, now)), counts).of(List.of(then, now));
    }

    private List<Difference> of(List<? extends EObject> elements) {
        compare("", List.copyOf(elements));
        return List.copyOf(found);
    }

    private void compare(String element, List<EObject> all) {
        boolean sameKind = all.stream().map(EObject::eClass).distinct().count() == 1;
        if (!sameKind) {
            found.add(new Difference(element, "", all.stream().map(e -> FieldInfo.classLabel(e.eClass())).toList()));
            return;
        }
        for (EStructuralFeature feature : all.get(0).eClass().getEAllStructuralFeatures()) {
            if (!counts.test(feature)) {
                continue;
            }
            if (isContainment(feature)) {
                compareHeld(all, feature);
            } else if (!feature.isDerived() && feature.isChangeable() && !isOwnName(element, feature)) {
                compareValues(element, all, feature);
            }
        }
    }

    static boolean isContainment(EStructuralFeature feature) {
        return feature instanceof EReference reference && reference.isContainment();
    }

    /** What is compared stands in the head by its name. */
    private static boolean isOwnName(String element, EStructuralFeature feature) {
        return element.isEmpty() && feature.getName().equals("name");
    }

    private void compareValues(String element, List<EObject> all, EStructuralFeature feature) {
        List<String> values = differing(all, feature);
        if (!values.isEmpty()) {
            found.add(new Difference(element, FieldInfo.of(feature).label(), values));
        }
    }

    /** The values of a field as it shows them, or in full where they differ in digits only that it does not show; empty where they are the same. */
    private List<String> differing(List<EObject> all, EStructuralFeature feature) {
        if (feature instanceof EAttribute && all.stream().map(e -> e.eGet(feature)).distinct().count() == 1) {
            return List.of();
        }
        if (feature instanceof EReference && pairs.filter(p -> p.isSame(all.get(0).eGet(feature), all.get(1).eGet(feature))).isPresent()) {
            return List.of();
        }
        FieldFormat format = FieldFormat.of(feature, units);
        List<String> shown = all.stream().map(e -> VariedNumber.shown(format, study(e), e, feature, e.eGet(feature))).toList();
        List<String> told = isSame(shown) ? all.stream().map(e -> VariedNumber.text(format, study(e), e, feature, e.eGet(feature))).toList() : shown;
        return isSame(told) ? List.of() : told;
    }

    private static boolean isSame(List<String> texts) {
        return texts.stream().distinct().count() == 1;
    }

    /** The study that an element stands in. */
    private Study study(EObject element) {
        return EcoreUtil.getRootContainer(element) instanceof Study own ? own : units;
    }

    private void compareHeld(List<EObject> all, EStructuralFeature feature) {
        for (List<EObject> same : matched(all, feature)) {
            EObject first = same.stream().filter(Objects::nonNull).findFirst().orElseThrow();
            if (pairs.isPresent() && first instanceof SourceNote note && isPartOfValue(note, all)) {
                continue;
            }
            if (same.contains(null)) {
                found.add(new Difference(ElementNames.withKind(first), "", same.stream().map(e -> e == null ? HAS_NOT : HAS).toList()));
            } else {
                compare(ElementNames.withKind(first), same);
            }
        }
    }

    /** What is the same in all, or null in those that have it not; those of the first come first. */
    private List<List<EObject>> matched(List<EObject> all, EStructuralFeature feature) {
        List<Map<String, EObject>> held = all.stream().map(e -> held(e, feature)).toList();
        if (pairs.isPresent()) {
            return paired(held.get(0).values(), held.get(1).values());
        }
        Set<String> names = new LinkedHashSet<>();
        held.forEach(h -> names.addAll(h.keySet()));
        return names.stream().map(name -> held.stream().map(h -> h.get(name)).toList()).toList();
    }

    private List<List<EObject>> paired(Collection<EObject> before, Collection<EObject> after) {
        List<List<EObject>> matched = new ArrayList<>();
        Set<EObject> come = Collections.newSetFromMap(new IdentityHashMap<>());
        come.addAll(after);
        for (EObject then : before) {
            EObject now = pairs.orElseThrow().now(then);
            come.remove(now);
            matched.add(Arrays.asList(then, now));
        }
        after.stream().filter(come::contains).forEach(now -> matched.add(Arrays.asList(null, now)));
        return matched;
    }

    /** True when a value differs of which a note tells the source. */
    private boolean isPartOfValue(SourceNote note, List<EObject> all) {
        return all.get(0).eClass().getEAllStructuralFeatures().stream()
                .filter(f -> f.getName().equals(note.getField()) || SourceNotes.EVERY_FIELD.equals(note.getField()))
                .anyMatch(f -> !isContainment(f) && !differing(all, f).isEmpty());
    }

    /** What an element holds, by names that are made to differ. */
    static Map<String, EObject> held(EObject element, EStructuralFeature feature) {
        Object value = element.eGet(feature);
        List<?> list = value instanceof List<?> several ? several : value == null ? List.of() : List.of(value);
        Map<String, EObject> named = new LinkedHashMap<>();
        for (Object held : list) {
            String name = feature.isMany() ? ElementNames.of((EObject) held) : "";
            int place = 1;
            String key = name;
            while (named.containsKey(key)) {
                place++;
                key = name + "\n" + place;
            }
            named.put(key, (EObject) held);
        }
        return named;
    }
}
