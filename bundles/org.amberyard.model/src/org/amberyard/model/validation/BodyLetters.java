package org.amberyard.model.validation;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;

/** Body types that an element holds for: trade letters in a row, or nothing for all. */
final class BodyLetters {
    private static final String LETTERS = "[ABCD]*";

    private BodyLetters() {
    }

    static void check(EObject element, EAttribute field, Findings findings) {
        if (element.eGet(field) instanceof String letters && !letters.matches(LETTERS)) {
            findings.error(element, field, findings.fact(element, field)
                    + "; allowed are the letters A, B, C and D without anything between them, or nothing for all.");
        }
    }
}
