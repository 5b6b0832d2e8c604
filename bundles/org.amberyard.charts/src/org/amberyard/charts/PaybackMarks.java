package org.amberyard.charts;

import java.awt.BasicStroke;
import java.awt.geom.Ellipse2D;
import org.amberyard.core.money.Payback;
import org.amberyard.core.plan.Comparison;
import org.amberyard.core.plan.StudyInput;
import org.jfree.chart.labels.ItemLabelAnchor;
import org.jfree.chart.labels.ItemLabelPosition;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Rings where plans have paid back, with the time beside them and a line down to the time axis; hidden with their plans. */
final class PaybackMarks {
    private static final BasicStroke DROP = new BasicStroke(1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 1,
            new float[] {2, 3}, 0);

    private final StudyInput study;
    private final ChartTheme theme;

    PaybackMarks(StudyInput study, ChartTheme theme) {
        this.study = study;
        this.theme = theme;
    }

    void add(XYPlot plot, Comparison comparison, String plan, CumulativeCost cost) {
        if (comparison.simple().outcome() != Payback.Outcome.AFTER) {
            return;
        }
        double year = study.baseYear() + comparison.simple().years();
        double sum = cost.at(comparison.simple().years());
        XYSeries series = new XYSeries(new LineKey(comparison.plan(), plan), false, true);
        series.add(year, 0);
        series.add(year, sum);
        int index = plot.getDatasetCount();
        plot.setDataset(index, new XYSeriesCollection(series));
        plot.setRenderer(index, ring(comparison));
    }

    private XYLineAndShapeRenderer ring(Comparison comparison) {
        XYLineAndShapeRenderer renderer = new Drop();
        renderer.setSeriesStroke(0, DROP);
        renderer.setSeriesPaint(0, theme.plan(comparison.plan()));
        renderer.setSeriesShape(0, new Ellipse2D.Double(-5.5, -5.5, 11, 11));
        renderer.setUseFillPaint(true);
        renderer.setSeriesFillPaint(0, theme.background());
        renderer.setUseOutlinePaint(true);
        renderer.setSeriesOutlinePaint(0, theme.plan(comparison.plan()));
        renderer.setSeriesOutlineStroke(0, new BasicStroke(2));
        renderer.setSeriesVisibleInLegend(0, false);
        String time = Figures.years(comparison.simple().years());
        renderer.setSeriesItemLabelGenerator(0, (dataset, series, item) -> time);
        renderer.setSeriesItemLabelsVisible(0, true);
        renderer.setSeriesItemLabelFont(0, theme.labelFont());
        renderer.setSeriesItemLabelPaint(0, theme.text());
        renderer.setSeriesPositiveItemLabelPosition(0, new ItemLabelPosition(ItemLabelAnchor.OUTSIDE4, TextAnchor.TOP_LEFT));
        return renderer;
    }

    /** A line from the axis up to a ring. */
    private static final class Drop extends XYLineAndShapeRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public boolean getItemShapeVisible(int series, int item) {
            return item == 1;
        }

        @Override
        public boolean isItemLabelVisible(int series, int item) {
            return item == 1;
        }
    }
}
