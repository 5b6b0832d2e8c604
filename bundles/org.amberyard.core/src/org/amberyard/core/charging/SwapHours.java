package org.amberyard.core.charging;

import java.util.List;

/**
 * Times at which a person is there to unplug a bus and plug the next one in. They come again with every turn of the stretch.
 *
 * @param lengthMin length of the stretch, minutes
 * @param spans spans of time
 */
public record SwapHours(double lengthMin, List<Span> spans) {

    /**
     * A span of time, minutes from the start of the stretch.
     *
     * @param fromMin start
     * @param toMin end, not before the start; may run over the end of the stretch
     */
    public record Span(double fromMin, double toMin) {
    }

    public SwapHours {
        spans = List.copyOf(spans);
    }

    /** Somebody is always there. */
    public static SwapHours always(double lengthMin) {
        return new SwapHours(lengthMin, List.of(new Span(0, lengthMin)));
    }

    /** Nobody is ever there. */
    public static SwapHours never(double lengthMin) {
        return new SwapHours(lengthMin, List.of());
    }

    /** First moment from a minute on at which a person is there; infinite when nobody comes. */
    public double next(double minute) {
        double best = Double.POSITIVE_INFINITY;
        for (Span span : spans) {
            double turn = turnOf(minute, span);
            best = Math.min(best, minute <= span.toMin + turn ? minute : span.fromMin + turn + lengthMin);
        }
        return best;
    }

    /** Last moment up to a minute at which a person is there; infinite and negative when nobody comes. */
    public double last(double minute) {
        double best = Double.NEGATIVE_INFINITY;
        for (Span span : spans) {
            best = Math.max(best, Math.min(minute, span.toMin + turnOf(minute, span)));
        }
        return best;
    }

    /** True when a person is there. */
    public boolean at(double minute) {
        for (Span span : spans) {
            if (minute <= span.toMin + turnOf(minute, span)) {
                return true;
            }
        }
        return false;
    }

    /** Start of the turn in which a span last began before a minute. */
    private double turnOf(double minute, Span span) {
        return Math.floor((minute - span.fromMin) / lengthMin) * lengthMin;
    }
}
