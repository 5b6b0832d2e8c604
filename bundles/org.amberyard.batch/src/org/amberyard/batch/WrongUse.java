package org.amberyard.batch;

/** A command that cannot be carried out as given; the message names the argument, its value and what is allowed. */
final class WrongUse extends Exception {
    private static final long serialVersionUID = 1L;

    WrongUse(String message) {
        super(message);
    }
}
