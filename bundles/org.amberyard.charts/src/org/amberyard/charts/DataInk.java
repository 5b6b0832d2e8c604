package org.amberyard.charts;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.category.CategoryDataset;
import org.jfree.data.xy.XYDataset;

/** Where a plot has lines and columns: points along them, close enough that nothing laid over the plot misses all of them. */
final class DataInk {
    private static final double STEP = 6;
    private static final int MOST_STEPS = 400;

    private final Rectangle2D area;
    private final List<Point2D> points = new ArrayList<>();

    private DataInk(Rectangle2D area) {
        this.area = area;
    }

    static DataInk of(XYPlot plot, Rectangle2D area, ValueAxis domain, ValueAxis range) {
        DataInk ink = new DataInk(area);
        if (plot.getOrientation() == PlotOrientation.VERTICAL) {
            for (int set = 0; set < plot.getDatasetCount(); set++) {
                if (plot.getDataset(set) != null) {
                    ink.lines(plot.getDataset(set), plot, domain, plot.getRangeAxisForDataset(set) == null ? range
                            : plot.getRangeAxisForDataset(set));
                }
            }
        }
        return ink;
    }

    static DataInk of(CategoryPlot plot, Rectangle2D area, CategoryAxis domain, ValueAxis range) {
        DataInk ink = new DataInk(area);
        if (plot.getOrientation() == PlotOrientation.VERTICAL) {
            for (int set = 0; set < plot.getDatasetCount(); set++) {
                if (plot.getDataset(set) != null) {
                    ink.columns(plot.getDataset(set), plot, domain, range);
                }
            }
        }
        return ink;
    }

    private void lines(XYDataset data, XYPlot plot, ValueAxis domain, ValueAxis range) {
        for (int series = 0; series < data.getSeriesCount(); series++) {
            Point2D last = null;
            for (int item = 0; item < data.getItemCount(series); item++) {
                Point2D at = new Point2D.Double(domain.valueToJava2D(data.getXValue(series, item), area, plot.getDomainAxisEdge()),
                        range.valueToJava2D(data.getYValue(series, item), area, plot.getRangeAxisEdge()));
                line(last == null ? at : last, at);
                last = at;
            }
        }
    }

    /** Values of a category stand on top of each other or side by side: what lies between the ends of the whole counts. */
    private void columns(CategoryDataset data, CategoryPlot plot, CategoryAxis domain, ValueAxis range) {
        double zero = range.valueToJava2D(0, area, plot.getRangeAxisEdge());
        for (int column = 0; column < data.getColumnCount(); column++) {
            double up = 0;
            double down = 0;
            for (int row = 0; row < data.getRowCount(); row++) {
                double value = data.getValue(row, column) == null ? 0 : data.getValue(row, column).doubleValue();
                up += Math.max(0, value);
                down += Math.min(0, value);
            }
            double left = domain.getCategoryStart(column, data.getColumnCount(), area, plot.getDomainAxisEdge());
            double right = domain.getCategoryEnd(column, data.getColumnCount(), area, plot.getDomainAxisEdge());
            for (double x = left; x <= right; x += STEP) {
                line(new Point2D.Double(x, zero), new Point2D.Double(x, range.valueToJava2D(up, area, plot.getRangeAxisEdge())));
                line(new Point2D.Double(x, zero), new Point2D.Double(x, range.valueToJava2D(down, area, plot.getRangeAxisEdge())));
            }
        }
    }

    private void line(Point2D from, Point2D to) {
        double length = from.distance(to);
        int steps = Double.isFinite(length) ? (int) Math.min(MOST_STEPS, Math.ceil(length / STEP)) : 0;
        for (int step = 0; step <= steps; step++) {
            double share = steps == 0 ? 0 : (double) step / steps;
            Point2D at = new Point2D.Double(from.getX() + share * (to.getX() - from.getX()), from.getY() + share * (to.getY() - from.getY()));
            if (area.contains(at)) {
                points.add(at);
            }
        }
    }

    /** How much of it lies in a box. */
    long in(Rectangle2D box) {
        return points.stream().filter(box::contains).count();
    }
}
