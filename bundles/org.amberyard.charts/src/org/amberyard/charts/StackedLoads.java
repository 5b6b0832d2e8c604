package org.amberyard.charts;

import java.util.List;
import org.jfree.data.xy.AbstractIntervalXYDataset;
import org.jfree.data.xy.TableXYDataset;

/** Layers of a load as bars of one step each. */
final class StackedLoads extends AbstractIntervalXYDataset implements TableXYDataset {
    private static final long serialVersionUID = 1L;

    private final transient List<DayLoad.Layer> layers;
    private final int steps;
    private final double stepMin;

    StackedLoads(DayLoad load) {
        this.layers = load.layers();
        this.steps = load.steps();
        this.stepMin = load.stepMin();
    }

    @Override
    public int getSeriesCount() {
        return layers.size();
    }

    @Override
    public Comparable<?> getSeriesKey(int series) {
        return layers.get(series).label();
    }

    @Override
    public int getItemCount() {
        return steps;
    }

    @Override
    public int getItemCount(int series) {
        return steps;
    }

    @Override
    public Number getX(int series, int item) {
        return (item + 0.5) * stepMin;
    }

    @Override
    public Number getStartX(int series, int item) {
        return item * stepMin;
    }

    @Override
    public Number getEndX(int series, int item) {
        return (item + 1) * stepMin;
    }

    @Override
    public Number getY(int series, int item) {
        return layers.get(series).kw()[item];
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
