package org.amberyard.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.FieldInfo;
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
    }

    private static final String HAS = "yes";
    private static final String HAS_NOT = "no";

    private final Study units;
    private final List<Difference> found = new ArrayList<>();

    private InputDifferences(Study units) {
        this.units = units;
    }

    /**
     * The differences, in the order of the model; to be called where the elements may be read.
     *
     * @param elements what is compared; all of one kind
     * @param units study in whose units values are given
     */
    public static List<Difference> of(List<? extends EObject> elements, Study units) {
        InputDifferences differences = new InputDifferences(units);
        differences.compare("", List.copyOf(elements));
        return List.copyOf(differences.found);
    }

    private void compare(String element, List<EObject> all) {
        boolean sameKind = all.stream().map(EObject::eClass).distinct().count() == 1;
        if (!sameKind) {
            found.add(new Difference(element, "", all.stream().map(e -> FieldInfo.classLabel(e.eClass())).toList()));
            return;
        }
        for (EStructuralFeature feature : all.get(0).eClass().getEAllStructuralFeatures()) {
            boolean contains = feature instanceof EReference reference && reference.isContainment();
            if (contains) {
                compareHeld(all, feature);
            } else if (!feature.isDerived() && feature.isChangeable() && !isOwnName(element, feature)) {
                compareValues(element, all, feature);
            }
        }
    }

    /** What is compared stands in the head by its name. */
    private static boolean isOwnName(String element, EStructuralFeature feature) {
        return element.isEmpty() && feature.getName().equals("name");
    }

    private void compareValues(String element, List<EObject> all, EStructuralFeature feature) {
        if (feature instanceof EAttribute && all.stream().map(e -> e.eGet(feature)).distinct().count() == 1) {
            return;
        }
        FieldFormat format = FieldFormat.of(feature, units);
        List<String> values = all.stream().map(e -> VariedNumber.text(format, study(e), e, feature, e.eGet(feature))).toList();
        if (values.stream().distinct().count() > 1) {
            found.add(new Difference(element, FieldInfo.of(feature).label(), values));
        }
    }

    /** The study that an element stands in. */
    private Study study(EObject element) {
        return EcoreUtil.getRootContainer(element) instanceof Study own ? own : units;
    }

    private void compareHeld(List<EObject> all, EStructuralFeature feature) {
        List<Map<String, EObject>> held = all.stream().map(e -> held(e, feature)).toList();
        Set<String> names = new LinkedHashSet<>();
        held.forEach(h -> names.addAll(h.keySet()));
        for (String name : names) {
            List<EObject> same = held.stream().map(h -> h.get(name)).toList();
            EObject first = same.stream().filter(Objects::nonNull).findFirst().orElseThrow();
            if (same.contains(null)) {
                found.add(new Difference(ElementNames.withKind(first), "", same.stream().map(e -> e == null ? HAS_NOT : HAS).toList()));
            } else {
                compare(ElementNames.withKind(first), same);
            }
        }
    }

    /** What an element holds, by names that are made to differ. */
    private static Map<String, EObject> held(EObject element, EStructuralFeature feature) {
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
