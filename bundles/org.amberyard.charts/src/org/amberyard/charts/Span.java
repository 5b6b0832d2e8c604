package org.amberyard.charts;

/**
 * A stretch of an axis.
 *
 * @param from lower end
 * @param to upper end
 */
public record Span(double from, double to) {

    /** Its length. */
    double length() {
        return to - from;
    }

    /** The place at a share of its length; shares below 0 and above 1 lie beyond its ends. */
    double at(double share) {
        return from + share * length();
    }

    /** The share of its length that lies below a place. */
    double share(double place) {
        return (place - from) / length();
    }

    /** The stretch between two shares of its length. */
    Span part(double fromShare, double toShare) {
        return new Span(at(fromShare), at(toShare));
    }

    /** Itself, moved and if need be shortened so that it lies within another. */
    Span within(Span whole) {
        if (length() >= whole.length()) {
            return whole;
        }
        double moved = Math.max(whole.from, Math.min(from, whole.to - length()));
        return new Span(moved, moved + length());
    }
}
