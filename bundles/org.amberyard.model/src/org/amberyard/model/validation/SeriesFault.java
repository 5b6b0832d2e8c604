package org.amberyard.model.validation;

import org.eclipse.emf.ecore.EAttribute;

/** What is wrong with the numbers in a text. */
final class SeriesFault extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient EAttribute field;

    SeriesFault(EAttribute field, String message) {
        super(message);
        this.field = field;
    }

    EAttribute field() {
        return field;
    }
}
