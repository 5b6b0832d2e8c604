package org.amberyard.charts;

import java.text.NumberFormat;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.labels.ItemLabelAnchor;
import org.jfree.chart.labels.ItemLabelPosition;
import org.jfree.chart.labels.StandardCategoryItemLabelGenerator;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.renderer.category.WaterfallBarRenderer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.category.CategoryDataset;

/** Bars of which each starts where the last one ends, with their figures beside them. */
final class WaterfallBars {

    /** What the tip of a bar says, by its column and value. */
    @FunctionalInterface
    interface Tip {
        String of(int column, double value);
    }

    /** Room beyond the longest bar for its figure, as a share of the axis. */
    private static final double ROOM_FOR_LABELS = 0.15;

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

    /**
     * Sums of money that lie over each other to a total.
     *
     * @param amounts one row; the last column is the sum of the others
     * @param names names of the bars
     * @param axis label of the axis of money
     * @param reach greatest amount, which says how the axis counts
     * @param tip what the tips say
     */
    static CategoryPlot ofMoney(CategoryDataset amounts, CategoryAxis names, String axis, double reach, Tip tip,
            ChartTheme theme) {
        NumberAxis money = ChartFrame.valueAxis(axis, MoneyTickFormat.reaching(reach), theme);
        money.setUpperMargin(ROOM_FOR_LABELS);
        CategoryPlot plot = new CategoryPlot(amounts, names, money, of(theme, Figures.pattern("#,##0;−#,##0"), tip));
        plot.setOrientation(PlotOrientation.HORIZONTAL);
        plot.setRangeAxisLocation(AxisLocation.BOTTOM_OR_LEFT);
        ChartFrame.style(plot, theme);
        plot.setFixedLegendItems(new LegendItemCollection());
        return plot;
    }

    /** Names of the bars. */
    static CategoryAxis causeAxis(ChartTheme theme) {
        CategoryAxis axis = new BarAxis();
        ChartFrame.style(axis, theme);
        axis.setMaximumCategoryLabelWidthRatio(0.4f);
        axis.setCategoryMargin(0.25);
        axis.setLowerMargin(0.02);
        axis.setUpperMargin(0.02);
        axis.setTickMarksVisible(false);
        return axis;
    }
}
