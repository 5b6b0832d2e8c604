package org.amberyard.charts;

import java.text.NumberFormat;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.labels.ItemLabelAnchor;
import org.jfree.chart.labels.ItemLabelPosition;
import org.jfree.chart.labels.StandardCategoryItemLabelGenerator;
import org.jfree.chart.renderer.category.WaterfallBarRenderer;
import org.jfree.chart.ui.TextAnchor;

/** Bars of which each starts where the last one ends, with their figures beside them. */
final class WaterfallBars {

    /** What the tip of a bar says, by its column and value. */
    @FunctionalInterface
    interface Tip {
        String of(int column, double value);
    }

    private WaterfallBars() {
    }

    static WaterfallBarRenderer of(ChartTheme theme, NumberFormat figures, Tip tip) {
        WaterfallBarRenderer bars = new WaterfallBarRenderer(theme.plan(1), theme.plan(1), theme.plan(3), theme.plan(0));
        bars.setShadowVisible(false);
        bars.setDrawBarOutline(false);
        bars.setDefaultItemLabelsVisible(true);
        bars.setDefaultItemLabelFont(theme.tickFont());
        bars.setDefaultItemLabelPaint(theme.text());
        bars.setDefaultItemLabelGenerator(new StandardCategoryItemLabelGenerator("{2}", figures));
        ItemLabelPosition beyond = new ItemLabelPosition(ItemLabelAnchor.OUTSIDE3, TextAnchor.CENTER_LEFT);
        bars.setDefaultPositiveItemLabelPosition(beyond);
        bars.setDefaultNegativeItemLabelPosition(beyond);
        bars.setDefaultToolTipGenerator((data, row, column) -> tip.of(column, data.getValue(row, column).doubleValue()));
        return bars;
    }

    /** Names of the bars. */
    static CategoryAxis causeAxis(ChartTheme theme) {
        CategoryAxis axis = new CategoryAxis();
        ChartFrame.style(axis, theme);
        axis.setMaximumCategoryLabelWidthRatio(0.4f);
        axis.setCategoryMargin(0.25);
        axis.setLowerMargin(0.02);
        axis.setUpperMargin(0.02);
        axis.setTickMarksVisible(false);
        return axis;
    }
}
