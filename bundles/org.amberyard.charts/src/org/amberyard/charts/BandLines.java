package org.amberyard.charts;

import java.awt.Color;
import java.util.List;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.DeviationRenderer;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;

/** Lines with bands around them, the widest band first and palest. */
final class BandLines {
    private static final float OPACITY = 0.55f;

    private final YIntervalSeriesCollection data = new YIntervalSeriesCollection();
    private final DeviationRenderer renderer = new DeviationRenderer(true, false);
    private final ChartTheme theme;

    /** A point of a line and the ends of its band. */
    record Point(double at, double value, double low, double high) {
    }

    BandLines(ChartTheme theme) {
        this.theme = theme;
        renderer.setAlpha(OPACITY);
    }

    /** Adds a band, its line drawn or not. */
    void add(String name, List<Point> points, Color line, Color fill, boolean drawn) {
        YIntervalSeries series = new YIntervalSeries(name);
        points.forEach(p -> series.add(p.at(), p.value(), p.low(), p.high()));
        int place = data.getSeriesCount();
        data.addSeries(series);
        renderer.setSeriesPaint(place, line);
        renderer.setSeriesFillPaint(place, fill);
        renderer.setSeriesStroke(place, theme.planStroke(0));
        renderer.setSeriesLinesVisible(place, drawn);
    }

    void addTo(XYPlot plot) {
        int place = plot.getDataset() == null ? 0 : plot.getDatasetCount();
        plot.setDataset(place, data);
        plot.setRenderer(place, renderer);
    }

    DeviationRenderer renderer() {
        return renderer;
    }
}
