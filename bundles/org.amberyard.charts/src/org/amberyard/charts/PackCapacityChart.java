package org.amberyard.charts;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.battery.PackReplacement;
import org.amberyard.core.plan.StudyResult;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItem;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.entity.ChartEntity;
import org.jfree.chart.entity.XYItemEntity;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.util.ShapeUtils;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Capacity over the years of every electric bus of a plan, with the ends of packs marked by their cause. */
public final class PackCapacityChart {
    private static final String NAME = "pack_capacity";
    private static final String TITLE = "Battery capacity";
    private static final int HEIGHT = 440;
    private static final float MARK = 6;

    private final PackCapacities capacities;
    private final List<Integer> types;
    private final XYSeriesCollection lines = new XYSeriesCollection();
    private final ChartTheme theme;

    private PackCapacityChart(PackCapacities capacities, ChartTheme theme) {
        this.capacities = capacities;
        this.types = capacities.list().stream().map(PackCapacities.Bus::type).distinct().sorted().toList();
        this.theme = theme;
        for (PackCapacities.Bus bus : capacities.list()) {
            lines.addSeries(series(bus.place() + " " + bus.unit(), bus.points()));
        }
    }

    /** The chart of a plan by its place in the study; it says so where the plan has no electric bus. */
    public static Chart of(StudyResult result, int plan, ChartTheme theme) {
        PackCapacityChart build = new PackCapacityChart(new PackCapacities(result, plan), theme);
        PackCapacities capacities = build.capacities;
        JFreeChart chart = capacities.list().isEmpty() ? ChartFrame.without(TITLE, capacities.none(), theme) : build.chart();
        return new Chart(NAME, TITLE, chart, capacities.sentences(), capacities.data(), HEIGHT, ChartFrame.LEAST_HEIGHT,
                build::subject);
    }

    private JFreeChart chart() {
        XYPlot plot = new XYPlot(lines, yearAxis(), capacityAxis(), lineRenderer());
        ChartFrame.style(plot, theme);
        plot.setDataset(1, marks());
        plot.setRenderer(1, markRenderer());
        plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
        plot.setFixedLegendItems(legend());
        return ChartFrame.around(plot, TITLE, "Plan “" + capacities.plan()
                + "”; present capacity over nominal, a line for each electric bus"
                + (capacities.ends().isEmpty() ? "; no pack comes to its end before the last year" : ""), theme);
    }

    private static XYSeries series(String key, List<PackCapacities.Point> points) {
        XYSeries series = new XYSeries(key, false, true);
        points.forEach(p -> series.add(p.time(), 100 * p.health()));
        return series;
    }

    private XYSeriesCollection marks() {
        XYSeriesCollection marks = new XYSeriesCollection();
        for (PackCapacities.End end : capacities.ends()) {
            marks.addSeries(series(marks.getSeriesCount() + " " + end.unit(), List.of(end.at())));
        }
        return marks;
    }

    private NumberAxis yearAxis() {
        NumberAxis axis = ChartFrame.valueAxis(null, Figures.pattern("0"), theme);
        axis.setStandardTickUnits(NumberAxis.createIntegerTickUnits());
        axis.setNumberFormatOverride(Figures.pattern("0"));
        axis.setAutoRangeIncludesZero(false);
        return axis;
    }

    private NumberAxis capacityAxis() {
        NumberAxis axis = ChartFrame.valueAxis("Capacity (%)", Figures.pattern("0"), theme);
        axis.setAutoRangeIncludesZero(false);
        axis.setUpperMargin(0.05);
        return axis;
    }

    private XYLineAndShapeRenderer lineRenderer() {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        for (int series = 0; series < capacities.list().size(); series++) {
            PackCapacities.Bus bus = capacities.list().get(series);
            int place = types.indexOf(bus.type());
            renderer.setSeriesPaint(series, theme.plan(place + 1));
            renderer.setSeriesStroke(series, theme.planStroke(place));
            renderer.setSeriesToolTipGenerator(series, (data, s, item) -> bus.unit() + ": "
                    + Figures.wholePercent(bus.points().get(item).health()));
        }
        return renderer;
    }

    private XYLineAndShapeRenderer markRenderer() {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
        for (int series = 0; series < capacities.ends().size(); series++) {
            PackCapacities.End end = capacities.ends().get(series);
            renderer.setSeriesPaint(series, theme.text());
            renderer.setSeriesShape(series, mark(end.cause()));
            renderer.setSeriesToolTipGenerator(series, (data, s, item) -> end.words());
        }
        return renderer;
    }

    private static Shape mark(PackReplacement.Cause cause) {
        return switch (cause) {
            case CYCLE_LIMIT -> ShapeUtils.createDiamond(MARK);
            case CAPACITY -> ShapeUtils.createDownTriangle(MARK);
            case DUTY -> ShapeUtils.createUpTriangle(MARK);
            case AGE -> new Ellipse2D.Double(-MARK / 2, -MARK / 2, MARK, MARK);
        };
    }

    private LegendItemCollection legend() {
        LegendItemCollection items = new LegendItemCollection();
        types.forEach(t -> items.add(ChartFrame.swatch(capacities.type(t), theme.plan(types.indexOf(t) + 1))));
        capacities.ends().stream().map(PackCapacities.End::cause).distinct().sorted().forEach(cause -> items.add(new LegendItem(
                "Pack at its end: " + cause.label(), null, null, null, mark(cause), theme.text(), new BasicStroke(1),
                theme.text())));
        return items;
    }

    private Optional<Subject> subject(ChartEntity entity) {
        if (!(entity instanceof XYItemEntity point)) {
            return Optional.empty();
        }
        int place = point.getDataset() == lines ? capacities.list().get(point.getSeriesIndex()).place()
                : capacities.ends().get(point.getSeriesIndex()).place();
        return Optional.of(new Subject(Subject.Kind.BUS, place));
    }
}
