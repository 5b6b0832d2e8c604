package org.amberyard.charts;

import java.awt.Paint;
import java.awt.Shape;
import java.awt.Stroke;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.amberyard.core.whatif.ContourLine;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.DefaultXYDataset;

/** Lines of equal saving over the cells of a grid: thin ones with their amount, a strong one where both plans cost the same. */
final class SavingContours {
    private static final int LAYER = 1;

    private final ChartTheme theme;
    private final DefaultXYDataset data = new DefaultXYDataset();
    private final XYLineAndShapeRenderer lines = new XYLineAndShapeRenderer(true, false);
    private final ContourLabels labels;

    SavingContours(ChartTheme theme) {
        this.theme = theme;
        this.labels = new ContourLabels(theme);
    }

    /** Thin lines of an amount, which stands on the longest. */
    void add(List<ContourLine> level, String amount) {
        level.forEach(line -> add(line, theme.quietText(), ChartFrame.THIN));
        level.stream().map(ContourLine::points).max(Comparator.comparingInt(List::size)).ifPresent(points -> labels.add(amount, points));
    }

    /** The lines on which both plans cost the same. */
    void addEven(List<ContourLine> even) {
        even.forEach(line -> add(line, theme.text(), theme.planStroke(0)));
    }

    private void add(ContourLine line, Paint paint, Stroke stroke) {
        List<ContourLine.Point> points = new ArrayList<>(line.points());
        if (line.closed()) {
            points.add(points.get(0));
        }
        int series = data.getSeriesCount();
        data.addSeries(series, new double[][] {points.stream().mapToDouble(ContourLine.Point::first).toArray(),
            points.stream().mapToDouble(ContourLine.Point::second).toArray()});
        lines.setSeriesPaint(series, paint);
        lines.setSeriesStroke(series, stroke);
    }

    void addPoint(double first, double second, Shape shape) {
        int series = data.getSeriesCount();
        data.addSeries(series, new double[][] {{first}, {second}});
        lines.setSeriesPaint(series, theme.text());
        lines.setSeriesShape(series, shape);
        lines.setSeriesShapesVisible(series, true);
    }

    /** Draws them over the cells of a plot. */
    void addTo(XYPlot plot) {
        plot.setDataset(LAYER, data);
        plot.setRenderer(LAYER, lines);
        plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
        plot.addAnnotation(labels);
    }
}
