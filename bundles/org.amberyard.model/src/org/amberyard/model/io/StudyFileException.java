package org.amberyard.model.io;

/** A study file that cannot be read or written. The message is written for people: what, where, why and what to do. */
public final class StudyFileException extends Exception {
    private static final long serialVersionUID = 1L;

    StudyFileException(String message) {
        super(message);
    }

    StudyFileException(String message, Throwable cause) {
        super(message, cause);
    }
}
