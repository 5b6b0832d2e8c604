package org.amberyard.core.whatif;

/** A draw that could not be evaluated. */
public final class DrawFailedException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final int draw;

    /**
     * A failure.
     *
     * @param draw number of the draw
     * @param cause what went wrong
     */
    public DrawFailedException(int draw, RuntimeException cause) {
        super("Draw " + draw + " cannot be evaluated: " + cause.getMessage(), cause);
        this.draw = draw;
    }

    /** Number of the draw, by which its inputs can be had again. */
    public int draw() {
        return draw;
    }
}
