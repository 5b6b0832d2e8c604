package org.amberyard.charts;

import java.awt.Paint;
import org.jfree.chart.renderer.category.LayeredBarRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;

/** Wide pale bars for new packs with narrow strong bars for aged packs on top; other colours below the reserve. */
final class MarginBars extends LayeredBarRenderer {
    private static final long serialVersionUID = 1L;
    private static final int NEW = 0;
    private static final int AGED = 1;
    /** The renderer takes two fifths off the first of two layers. */
    private static final double WIDE = 1.5;
    private static final double NARROW = 0.4;

    private final transient ChartTheme theme;

    MarginBars(ChartTheme theme) {
        this.theme = theme;
        setBarPainter(new StandardBarPainter());
        setShadowVisible(false);
        setDrawBarOutline(false);
        setItemMargin(0);
        setSeriesBarWidth(NEW, WIDE);
        setSeriesBarWidth(AGED, NARROW);
    }

    @Override
    public Paint getItemPaint(int row, int column) {
        Number value = getPlot().getDataset().getValue(row, column);
        boolean fails = value != null && value.doubleValue() < 0;
        return fails ? theme.fails(row == NEW) : theme.passes(row == NEW);
    }
}
