package org.amberyard.charts;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * How someone looks at a chart.
 *
 * @param hidden what is hidden of it, by its names in the legend
 * @param zoom the part that is shown; empty for the whole
 */
public record ChartLook(Set<String> hidden, Optional<ChartZoom> zoom) {

    /** The whole chart with all that it shows. */
    public static final ChartLook WHOLE = new ChartLook(Set.of(), Optional.empty());

    public ChartLook {
        hidden = Set.copyOf(hidden);
    }

    /** The same with something hidden, or shown again if it was. */
    public ChartLook toggled(String series) {
        Set<String> next = new TreeSet<>(hidden);
        if (!next.remove(series)) {
            next.add(series);
        }
        return new ChartLook(next, zoom);
    }

    /** The same with another part. */
    public ChartLook with(Optional<ChartZoom> next) {
        return new ChartLook(hidden, next);
    }

    /** The same with other things hidden. */
    public ChartLook hiding(Set<String> next) {
        return new ChartLook(next, zoom);
    }
}
