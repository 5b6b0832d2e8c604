package org.amberyard.exchange.sheet;

/** A file holds more than is read. */
final class TooMuch extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** @param message what is too much, what is allowed and what to do */
    TooMuch(String message) {
        super(message);
    }
}
