package org.amberyard.charts;

import java.awt.BasicStroke;
import java.awt.geom.Line2D;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.amberyard.core.depot.ServiceYear;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItem;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CategoryMarker;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.renderer.category.BarRenderer;
import org.jfree.chart.renderer.category.LevelRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.category.DefaultCategoryDataset;

/** Load on the yard's service by year, with all ports at full power and as planned, against what the service carries. */
public final class ServiceLoadChart {
    private static final String NAME = "service_load";
    private static final String TITLE = "Load on the electric service by year";
    private static final int HEIGHT = 440;
    private static final double HEADROOM = 1.3;
    private static final float LINE = 2.4f;
    private static final int LEAST = 225;

    private final List<ServiceYear> years;
    private final ServiceLoadText text;
    private final ChartTheme theme;

    private ServiceLoadChart(StudyResult result, int plan, ChartTheme theme) {
        this.years = result.plans().get(plan).service();
        this.text = new ServiceLoadText(result.input().baseYear(), result.plans().get(plan).name(), years);
        this.theme = theme;
    }

    /** The chart of a plan by its place. Electric power has no unit system. */
    public static Chart of(StudyResult result, int plan, UnitSystem system, ChartTheme theme) {
        ServiceLoadChart build = new ServiceLoadChart(result, plan, theme);
        Subject behind = new Subject(Subject.Kind.PLAN, plan);
        return new Chart(NAME, TITLE, build.chart(), build.text.sentences().replace('\n', ' '), build.text.data(), HEIGHT,
                LEAST, entity -> Optional.of(behind));
    }

    private JFreeChart chart() {
        CategoryPlot plot = new CategoryPlot(loads(), YearAxis.of(theme), powerAxis(), bars());
        ChartFrame.style(plot, theme);
        addLimit(plot, 1, "Transformer", ServiceYear::transformerKva, new BasicStroke(LINE));
        addLimit(plot, 2, "Main breaker, continuous", ServiceYear::breakerContinuousKva, dashed());
        plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
        text.breaches().forEach((year, words) -> plot.addDomainMarker(mark(year, words), Layer.FOREGROUND));
        plot.setFixedLegendItems(legend());
        return ChartFrame.around(plot, TITLE, text.sentences(), theme);
    }

    private static BasicStroke dashed() {
        return new BasicStroke(LINE, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {6, 3}, 0);
    }

    private DefaultCategoryDataset loads() {
        DefaultCategoryDataset dataset = new DefaultCategoryDataset();
        for (int year = 0; year < years.size(); year++) {
            dataset.addValue(years.get(year).connectedKva(), "All ports at full power", Integer.valueOf(text.calendar(year)));
            dataset.addValue(years.get(year).demandKva(), "As planned", Integer.valueOf(text.calendar(year)));
        }
        return dataset;
    }

    private NumberAxis powerAxis() {
        NumberAxis axis = ChartFrame.valueAxis("Load (kVA)", Figures.pattern("#,##0"), theme);
        axis.setRange(0, HEADROOM * years.stream().mapToDouble(y -> Math.max(Math.max(y.connectedKva(), y.demandKva()),
                Math.max(y.transformerKva(), y.breakerContinuousKva()))).max().orElseThrow());
        return axis;
    }

    private BarRenderer bars() {
        BarRenderer bars = new BarRenderer();
        bars.setBarPainter(new StandardBarPainter());
        bars.setShadowVisible(false);
        bars.setItemMargin(0.05);
        bars.setSeriesPaint(0, theme.passes(true));
        bars.setSeriesPaint(1, theme.passes(false));
        bars.setDefaultToolTipGenerator((data, row, column) -> data.getRowKey(row) + ", " + data.getColumnKey(column) + ": "
                + Figures.whole(data.getValue(row, column).doubleValue()) + " of " + Figures.whole(years.get(column).limitKva())
                + " kVA");
        return bars;
    }

    /** A level for each year, so that an upgrade shows as a step. */
    private void addLimit(CategoryPlot plot, int place, String name, ToDoubleFunction<ServiceYear> kva, BasicStroke stroke) {
        DefaultCategoryDataset dataset = new DefaultCategoryDataset();
        for (int year = 0; year < years.size(); year++) {
            dataset.addValue(kva.applyAsDouble(years.get(year)), name, Integer.valueOf(text.calendar(year)));
        }
        LevelRenderer levels = new LevelRenderer();
        levels.setSeriesPaint(0, theme.fails(false));
        levels.setSeriesStroke(0, stroke);
        levels.setDefaultToolTipGenerator((data, row, column) -> name + ", " + data.getColumnKey(column) + ": "
                + Figures.whole(data.getValue(row, column).doubleValue()) + " kVA");
        plot.setDataset(place, dataset);
        plot.setRenderer(place, levels);
    }

    /** The words stand beside the line, on the side where there is room. */
    private CategoryMarker mark(int year, String words) {
        CategoryMarker mark = new CategoryMarker(Integer.valueOf(text.calendar(year)), theme.text(), new BasicStroke(1));
        mark.setDrawAsLine(true);
        mark.setAlpha(1);
        mark.setLabel(" " + text.calendar(year) + ": " + words + " ");
        mark.setLabelFont(theme.tickFont());
        mark.setLabelPaint(theme.text());
        mark.setLabelBackgroundColor(theme.background());
        mark.setLabelAnchor(RectangleAnchor.TOP);
        mark.setLabelTextAnchor(year > years.size() / 2 ? TextAnchor.TOP_RIGHT : TextAnchor.TOP_LEFT);
        return mark;
    }

    private LegendItemCollection legend() {
        LegendItemCollection items = new LegendItemCollection();
        items.add(ChartFrame.swatch("All ports at full power", theme.passes(true)));
        items.add(ChartFrame.swatch("As planned", theme.passes(false)));
        items.add(line("Transformer", new BasicStroke(LINE)));
        items.add(line("Main breaker, continuous", dashed()));
        return items;
    }

    private LegendItem line(String label, BasicStroke stroke) {
        return new LegendItem(label, null, null, null, new Line2D.Double(-9, 0, 9, 0), stroke, theme.fails(false));
    }
}
