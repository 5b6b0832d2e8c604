package org.amberyard.model.validation;

import java.util.List;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

/** What the model requires is there: texts are not blank, elements are chosen. */
final class RequiredRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        Elements.of(study).forEach(element -> element.eClass().getEAllStructuralFeatures().stream()
                .filter(EStructuralFeature::isRequired)
                .filter(field -> isMissing(element.eGet(field)))
                .forEach(field -> findings.fault(element, field, Findings.label(field) + " is missing; "
                        + remedy(field) + ".")));
    }

    private static boolean isMissing(Object value) {
        return value == null || value instanceof String text && text.isBlank()
                || value instanceof List<?> list && list.isEmpty();
    }

    private static String remedy(EStructuralFeature field) {
        if (field instanceof EReference reference) {
            return reference.isContainment() ? "add it" : "choose one";
        }
        return "enter it";
    }
}
