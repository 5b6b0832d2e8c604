package org.amberyard.model.validation;

import java.util.Objects;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * Something in a study, or in its results, that a person should look at.
 *
 * @param severity how much it matters
 * @param element the element to open
 * @param feature the field to put right, or null when it concerns the element as a whole
 * @param message what is wrong, where, and what to do, in whole sentences
 */
public record Finding(Severity severity, EObject element, EStructuralFeature feature, String message) {

    public Finding {
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(element, "element");
        Objects.requireNonNull(message, "message");
    }
}
