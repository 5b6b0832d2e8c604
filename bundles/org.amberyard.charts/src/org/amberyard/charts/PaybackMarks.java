package org.amberyard.charts;

import java.awt.BasicStroke;
import java.awt.geom.Ellipse2D;
import java.util.List;
import org.amberyard.core.money.Payback;
import org.amberyard.core.plan.Comparison;
import org.amberyard.core.plan.StudyInput;
import org.jfree.chart.annotations.XYLineAnnotation;
import org.jfree.chart.annotations.XYTitleAnnotation;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Rings where plans have paid back, a line from each down to the time axis, and the words beside them. */
final class PaybackMarks {
    private static final BasicStroke DROP = new BasicStroke(1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 1,
            new float[] {2, 3}, 0);

    private final StudyInput study;
    private final ChartTheme theme;

    PaybackMarks(StudyInput study, ChartTheme theme) {
        this.study = study;
        this.theme = theme;
    }

    void add(XYPlot plot, Comparison comparison, CumulativeCost cost) {
        if (comparison.simple().outcome() != Payback.Outcome.AFTER) {
            return;
        }
        double year = study.baseYear() + comparison.simple().years();
        double sum = cost.at(comparison.simple().years());
        plot.addAnnotation(new XYLineAnnotation(year, 0, year, sum, DROP, theme.plan(comparison.plan())));
        XYSeries series = new XYSeries("Payback " + comparison.plan());
        series.add(year, sum);
        int index = plot.getDatasetCount();
        plot.setDataset(index, new XYSeriesCollection(series));
        plot.setRenderer(index, ring(comparison.plan()));
    }

    private XYLineAndShapeRenderer ring(int plan) {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
        renderer.setSeriesShape(0, new Ellipse2D.Double(-5.5, -5.5, 11, 11));
        renderer.setUseFillPaint(true);
        renderer.setSeriesFillPaint(0, theme.background());
        renderer.setUseOutlinePaint(true);
        renderer.setSeriesOutlinePaint(0, theme.plan(plan));
        renderer.setSeriesOutlineStroke(0, new BasicStroke(2));
        renderer.setSeriesVisibleInLegend(0, false);
        return renderer;
    }

    /** Cumulative costs rise, so the lower right corner is free for words. */
    void addWords(XYPlot plot, List<String> lines) {
        if (!lines.isEmpty()) {
            TextTitle words = new TextTitle(String.join("\n", lines), theme.labelFont());
            words.setPaint(theme.text());
            words.setBackgroundPaint(theme.background());
            words.setTextAlignment(HorizontalAlignment.RIGHT);
            words.setPadding(4, 6, 4, 6);
            plot.addAnnotation(new XYTitleAnnotation(0.985, 0.04, words, RectangleAnchor.BOTTOM_RIGHT));
        }
    }
}
