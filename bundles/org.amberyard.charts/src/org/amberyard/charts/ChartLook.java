package org.amberyard.charts;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * How someone looks at a chart.
 *
 * @param hidden what is hidden of it, by its names in the legend
 * @param zoom the part that is shown; empty for the whole
 * @param remarks what was noted on it
 */
public record ChartLook(Set<String> hidden, Optional<ChartZoom> zoom, List<ChartRemark> remarks) {

    /** The whole chart with all that it shows. */
    public static final ChartLook WHOLE = new ChartLook(Set.of(), Optional.empty(), List.of());

    public ChartLook {
        hidden = Set.copyOf(hidden);
        remarks = List.copyOf(remarks);
    }

    /** The same with something hidden, or shown again if it was. */
    public ChartLook toggled(String series) {
        Set<String> next = new TreeSet<>(hidden);
        if (!next.remove(series)) {
            next.add(series);
        }
        return new ChartLook(next, zoom, remarks);
    }

    /** The same with another part. */
    public ChartLook with(Optional<ChartZoom> next) {
        return new ChartLook(hidden, next, remarks);
    }

    /** The same with other notes. */
    public ChartLook with(List<ChartRemark> next) {
        return new ChartLook(hidden, zoom, next);
    }

    /** The same with other things hidden. */
    public ChartLook hiding(Set<String> next) {
        return new ChartLook(next, zoom, remarks);
    }
}
