package org.amberyard.core.trace;

/** A track that no drive can be made from; the message says why and what is needed. */
public final class UnusableTrackException extends Exception {
    private static final long serialVersionUID = 1L;

    UnusableTrackException(String message) {
        super(message);
    }
}
