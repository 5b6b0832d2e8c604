package org.amberyard.study;

/** A typed text that cannot be a value of its field; the message names the field, the text and what is allowed. */
public final class FieldFormatException extends Exception {
    private static final long serialVersionUID = 1L;

    FieldFormatException(String message) {
        super(message);
    }
}
