package org.amberyard.core.trace;

/**
 * Gaps of one kind.
 *
 * @param count how many
 * @param seconds their time together, s
 */
public record GapTotal(int count, double seconds) {
    static final GapTotal NONE = new GapTotal(0, 0);

    GapTotal and(double moreSeconds) {
        return new GapTotal(count + 1, seconds + moreSeconds);
    }
}
