package org.amberyard.core.charging;

import java.util.ArrayList;
import java.util.List;

/**
 * Times of a stay in which a bus may charge, in order.
 *
 * @param spans the times
 */
record ChargeTimes(List<Span> spans) {

    /**
     * A time without a pause.
     *
     * @param fromMin start, minutes counted as the stay
     * @param toMin end, after the start
     */
    record Span(double fromMin, double toMin) {
    }

    ChargeTimes {
        spans = List.copyOf(spans);
    }

    /** Those between two moments. */
    ChargeTimes between(double fromMin, double toMin) {
        List<Span> within = new ArrayList<>(spans.size());
        for (Span span : spans) {
            double start = Math.max(fromMin, span.fromMin);
            double end = Math.min(toMin, span.toMin);
            if (start < end) {
                within.add(new Span(start, end));
            }
        }
        return new ChargeTimes(within);
    }

    /** The same so many minutes later. */
    ChargeTimes later(double minutes) {
        return new ChargeTimes(spans.stream().map(s -> new Span(s.fromMin + minutes, s.toMin + minutes)).toList());
    }

    /** How long they are together, minutes. */
    double minutes() {
        double sum = 0;
        for (Span span : spans) {
            sum += span.toMin - span.fromMin;
        }
        return sum;
    }

    /** End of the time in which a moment falls; negative infinity when it falls in none. */
    double endMin(double nowMin) {
        for (Span span : spans) {
            if (span.fromMin <= nowMin && nowMin < span.toMin) {
                return span.toMin;
            }
        }
        return Double.NEGATIVE_INFINITY;
    }

    /** Start of the next one after a moment; infinite when there is none. */
    double nextMin(double nowMin) {
        for (Span span : spans) {
            if (span.fromMin > nowMin) {
                return span.fromMin;
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    /** Moment at which so many minutes of them have passed; negative infinity when they are too short for it. */
    double after(double minutes) {
        double left = minutes;
        for (Span span : spans) {
            if (left <= span.toMin - span.fromMin) {
                return span.fromMin + left;
            }
            left -= span.toMin - span.fromMin;
        }
        return Double.NEGATIVE_INFINITY;
    }
}
