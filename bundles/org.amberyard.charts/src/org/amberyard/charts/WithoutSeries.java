package org.amberyard.charts;

import java.util.Set;
import org.jfree.data.xy.AbstractIntervalXYDataset;
import org.jfree.data.xy.IntervalXYDataset;
import org.jfree.data.xy.TableXYDataset;

/** Layers of which some are hidden: they keep their places and have no figures. */
final class WithoutSeries extends AbstractIntervalXYDataset implements TableXYDataset {
    private static final long serialVersionUID = 1L;

    private final IntervalXYDataset whole;
    private final Set<Integer> hidden;

    WithoutSeries(IntervalXYDataset whole, Set<Integer> hidden) {
        this.whole = whole;
        this.hidden = Set.copyOf(hidden);
    }

    @Override
    public int getSeriesCount() {
        return whole.getSeriesCount();
    }

    @Override
    public Comparable<?> getSeriesKey(int series) {
        return whole.getSeriesKey(series);
    }

    @Override
    public int getItemCount() {
        return ((TableXYDataset) whole).getItemCount();
    }

    @Override
    public int getItemCount(int series) {
        return whole.getItemCount(series);
    }

    @Override
    public Number getX(int series, int item) {
        return whole.getX(series, item);
    }

    @Override
    public Number getStartX(int series, int item) {
        return whole.getStartX(series, item);
    }

    @Override
    public Number getEndX(int series, int item) {
        return whole.getEndX(series, item);
    }

    @Override
    public Number getY(int series, int item) {
        return hidden.contains(series) ? null : whole.getY(series, item);
    }

    @Override
    public Number getStartY(int series, int item) {
        return getY(series, item);
    }

    @Override
    public Number getEndY(int series, int item) {
        return getY(series, item);
    }
}
