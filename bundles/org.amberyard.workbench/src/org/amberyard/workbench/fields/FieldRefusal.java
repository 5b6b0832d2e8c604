package org.amberyard.workbench.fields;

/** A text that a field does not take; the message is meant for the user. */
public final class FieldRefusal extends Exception {
    private static final long serialVersionUID = 1L;

    public FieldRefusal(String message) {
        super(message);
    }
}
