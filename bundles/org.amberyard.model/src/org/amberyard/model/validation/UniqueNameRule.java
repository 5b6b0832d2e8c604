package org.amberyard.model.validation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Names tell siblings apart. */
final class UniqueNameRule implements Rule {
    private static final String NAME = "name";

    @Override
    public void check(Study study, Findings findings) {
        for (EObject owner : Elements.of(study)) {
            for (EReference holder : owner.eClass().getEAllContainments()) {
                EStructuralFeature name = holder.getEReferenceType().getEStructuralFeature(NAME);
                if (holder.isMany() && name != null) {
                    check((List<?>) owner.eGet(holder), holder, findings);
                }
            }
        }
    }

    private static void check(List<?> siblings, EReference holder, Findings findings) {
        Map<String, List<Integer>> rows = new LinkedHashMap<>();
        for (int i = 0; i < siblings.size(); i++) {
            rows.computeIfAbsent(nameOf((EObject) siblings.get(i)), name -> new ArrayList<>()).add(i + 1);
        }
        rows.remove("");
        rows.forEach((name, places) -> {
            if (places.size() > 1) {
                EObject second = (EObject) siblings.get(places.get(1) - 1);
                findings.fault(second, second.eClass().getEStructuralFeature(NAME), name + " appears on rows "
                        + enumerate(places) + " of " + FieldInfo.of(holder).label() + "; give each its own name.");
            }
        });
    }

    /** The name as people compare it. */
    private static String nameOf(EObject element) {
        Object name = element.eGet(element.eClass().getEStructuralFeature(NAME));
        return name == null ? "" : name.toString().strip();
    }

    private static String enumerate(List<Integer> places) {
        int last = places.size() - 1;
        return places.subList(0, last).stream().map(String::valueOf).collect(Collectors.joining(", "))
                + " and " + places.get(last);
    }
}
