package org.amberyard.exchange.sheet;

/** A cell that holds no value of its column. */
final class CellFault extends Exception {
    private static final long serialVersionUID = 1L;

    private final String id;

    /**
     * @param id id of the column
     * @param message what is wrong and what is allowed
     */
    CellFault(String id, String message) {
        super(message);
        this.id = id;
    }

    String id() {
        return id;
    }
}
