package org.amberyard.model.validation;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Renders stored values for messages; the caller decides on units and locale. */
@FunctionalInterface
public interface ValueText {

    /** Prints stored numbers with their stored units. */
    ValueText PLAIN = new PlainValueText();

    /**
     * Text of a value with its unit.
     *
     * @param feature the field that the value is of, or is a limit of
     * @param owner the element that has the field
     * @param value the stored value, of the field's own Java type
     */
    String text(EStructuralFeature feature, EObject owner, Object value);
}
