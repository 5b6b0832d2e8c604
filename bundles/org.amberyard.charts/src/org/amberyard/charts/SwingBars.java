package org.amberyard.charts;

import java.awt.Paint;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.renderer.category.CategoryItemRendererState;
import org.jfree.chart.renderer.category.IntervalBarRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;

/** Bars of low and high inputs on one line: that of the low one pale and, so that it shows without colours, less high. */
final class SwingBars extends IntervalBarRenderer {
    private static final long serialVersionUID = 1L;
    private static final double PALE = 0.7;

    private final transient ChartTheme theme;

    SwingBars(ChartTheme theme) {
        this.theme = theme;
        setBarPainter(new StandardBarPainter());
        setShadowVisible(false);
        setDrawBarOutline(false);
        setItemMargin(0);
    }

    @Override
    public Paint getItemPaint(int row, int column) {
        return theme.passes(row == 0);
    }

    @Override
    protected double calculateBarW0(CategoryPlot plot, PlotOrientation orientation,
            Rectangle2D area, CategoryAxis axis, CategoryItemRendererState state, int row, int column) {
        double middle = axis.getCategoryMiddle(column, getColumnCount(), area, plot.getDomainAxisEdge());
        double width = axis.getCategoryEnd(column, getColumnCount(), area, plot.getDomainAxisEdge())
                - axis.getCategoryStart(column, getColumnCount(), area, plot.getDomainAxisEdge());
        state.setBarWidth(row == 0 ? PALE * width : width);
        return middle - state.getBarWidth() / 2;
    }
}
