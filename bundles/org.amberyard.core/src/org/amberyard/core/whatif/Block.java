package org.amberyard.core.whatif;

/**
 * Results of some neighbouring draws.
 *
 * @param firstDraw number of its first draw
 * @param columns by result and draw; not to be changed
 */
public record Block(int firstDraw, double[][] columns) {

    /** Number of draws. */
    public int draws() {
        return columns[0].length;
    }

    /** Number of the draw behind the last. */
    public int endDraw() {
        return firstDraw + draws();
    }
}
