package org.amberyard.model.validation;

import java.util.List;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** References lead to elements of the same study, not to what was deleted or belongs to another. */
final class OwnStudyRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        for (EObject element : Elements.of(study)) {
            for (EReference reference : element.eClass().getEAllReferences()) {
                if (!reference.isContainment() && !reference.isContainer()) {
                    targets(element, reference).stream().filter(t -> !EcoreUtil.isAncestor(study, t))
                            .forEach(t -> findings.error(element, reference, Findings.label(reference) + " is "
                                    + ElementNames.of(t) + ", which is not part of this study; choose another."));
                }
            }
        }
    }

    private static List<EObject> targets(EObject element, EReference reference) {
        Object value = element.eGet(reference);
        if (value instanceof List<?> list) {
            return list.stream().map(EObject.class::cast).toList();
        }
        return value == null ? List.of() : List.of((EObject) value);
    }
}
