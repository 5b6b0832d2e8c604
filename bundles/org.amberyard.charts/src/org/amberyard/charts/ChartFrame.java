package org.amberyard.charts;

import java.awt.BasicStroke;
import java.awt.Paint;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.text.NumberFormat;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItem;
import org.jfree.chart.axis.Axis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.block.BlockBorder;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.text.TextUtils;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;

/** Puts title, subtitle and legend around a plot and gives all of it the theme. */
final class ChartFrame {
    /** A square in a legend. */
    static final Shape SWATCH = new Rectangle2D.Double(-5, -5, 10, 10);
    /** A line in a legend. */
    static final Shape LINE = new Line2D.Double(-16, 0, 16, 0);
    /** A line that marks a value. */
    static final BasicStroke THIN = new BasicStroke(1.2f);
    /** Height in pixels below which a chart of lines or columns cannot be read. */
    static final int LEAST_HEIGHT = 215;
    private static final double TIGHTEST = 0.8;
    private static final double DAY_MIN = 1440;
    private static final double TICK_OF_DAY_MIN = 120;
    private static final double TICK_OF_DAYS_MIN = 360;
    private static final BasicStroke HAIRLINE = new BasicStroke(0.75f);

    static {
        // As outlines, titles along an axis would have another font in vectors than all else, and be no words to those who read or search a file.
        TextUtils.setUseDrawRotatedStringWorkaround(false);
    }

    private ChartFrame() {
    }

    /** The least height of a chart with a line for each item, which must not be squeezed much. */
    static int least(int preferredHeight) {
        return (int) Math.round(TIGHTEST * preferredHeight);
    }

    static JFreeChart around(Plot plot, String title, String subtitle, ChartTheme theme) {
        JFreeChart chart = new JFreeChart(title, theme.titleFont(), plot, false);
        chart.setBackgroundPaint(theme.background());
        chart.setPadding(new RectangleInsets(10, 12, 8, 18));
        style(chart.getTitle(), theme);
        TextTitle below = new TextTitle(subtitle, theme.labelFont());
        style(below, theme);
        below.setPaint(theme.quietText());
        chart.addSubtitle(below);
        chart.addSubtitle(legend(plot, theme));
        return chart;
    }

    /** A chart without a plot, which says why there is none. */
    static JFreeChart without(String title, String reason, ChartTheme theme) {
        XYPlot plot = new XYPlot();
        style(plot, theme);
        return around(plot, title, reason, theme);
    }

    /** The same with its words; what it would show is missing. */
    static Chart none(String name, String title, String reason, int height, ChartTheme theme) {
        return new Chart(name, title, without(title, reason, theme), reason, new ChartData(List.of(), List.of()), height,
                LEAST_HEIGHT, Subjects.NONE);
    }

    private static void style(TextTitle title, ChartTheme theme) {
        title.setPaint(theme.text());
        title.setHorizontalAlignment(HorizontalAlignment.LEFT);
        title.setTextAlignment(HorizontalAlignment.LEFT);
        title.setPadding(0, 4, 4, 4);
    }

    private static LegendTitle legend(Plot plot, ChartTheme theme) {
        LegendTitle legend = new LegendTitle(plot);
        legend.setPosition(RectangleEdge.BOTTOM);
        legend.setFrame(BlockBorder.NONE);
        legend.setBackgroundPaint(theme.background());
        legend.setItemFont(theme.labelFont());
        legend.setItemPaint(theme.text());
        legend.setItemLabelPadding(new RectangleInsets(2, 3, 2, 14));
        return legend;
    }

    static LegendItem swatch(String label, Paint paint) {
        return new LegendItem(label, null, null, null, SWATCH, paint);
    }

    static LegendItem line(String label, Stroke stroke, Paint paint) {
        return new LegendItem(label, null, null, null, LINE, stroke, paint);
    }

    static void style(Axis axis, ChartTheme theme) {
        axis.setLabelFont(theme.labelFont());
        axis.setLabelPaint(theme.quietText());
        axis.setTickLabelFont(theme.tickFont());
        axis.setTickLabelPaint(theme.text());
        axis.setAxisLinePaint(theme.quietText());
        axis.setTickMarkPaint(theme.quietText());
    }

    /** A value axis; the insets keep its ticks from standing too close. */
    static NumberAxis valueAxis(String label, NumberFormat format, ChartTheme theme) {
        NumberAxis axis = new NumberAxis(label);
        style(axis, theme);
        axis.setTickLabelInsets(new RectangleInsets(6, 4, 6, 4));
        axis.setNumberFormatOverride(format);
        return axis;
    }

    /** Hours of a stretch of days. */
    static NumberAxis clockAxis(int days, ChartTheme theme) {
        NumberAxis axis = new NumberAxis(null);
        style(axis, theme);
        axis.setNumberFormatOverride(new ClockTickFormat());
        axis.setTickUnit(new NumberTickUnit(days == 1 ? TICK_OF_DAY_MIN : TICK_OF_DAYS_MIN));
        axis.setRange(0, days * DAY_MIN);
        return axis;
    }

    static void style(CategoryPlot plot, ChartTheme theme) {
        plot.setBackgroundPaint(theme.background());
        plot.setOutlineVisible(false);
        plot.setRangeGridlinePaint(theme.gridline());
        plot.setRangeGridlineStroke(HAIRLINE);
        plot.setRangeZeroBaselineVisible(true);
        plot.setRangeZeroBaselinePaint(theme.quietText());
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    }

    static void style(XYPlot plot, ChartTheme theme) {
        plot.setBackgroundPaint(theme.background());
        plot.setOutlineVisible(false);
        plot.setRangeGridlinePaint(theme.gridline());
        plot.setRangeGridlineStroke(HAIRLINE);
        plot.setDomainGridlinesVisible(false);
        plot.setRangeZeroBaselineVisible(true);
        plot.setRangeZeroBaselinePaint(theme.quietText());
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    }
}
