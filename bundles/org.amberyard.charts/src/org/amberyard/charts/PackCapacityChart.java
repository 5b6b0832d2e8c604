package org.amberyard.charts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.amberyard.core.plan.StudyResult;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.entity.ChartEntity;
import org.jfree.chart.entity.XYItemEntity;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Capacity over the years of every electric bus of a plan, with the ends of packs marked by their cause. */
public final class PackCapacityChart {
    private static final String NAME = "pack_capacity";
    private static final String TITLE = "Battery capacity";
    private static final int HEIGHT = 440;

    private final PackCapacities capacities;
    private final List<PackCapacities.Bus> picked;
    private final List<PackCapacities.Bus> drawn;
    private final PackStyle style;
    private final XYSeriesCollection lines = new XYSeriesCollection();
    private final ChartTheme theme;

    private PackCapacityChart(PackCapacities capacities, OptionalInt place, ChartTheme theme) {
        this.capacities = capacities;
        this.picked = capacities.list().stream().filter(b -> place.equals(OptionalInt.of(b.place()))).toList();
        this.drawn = new ArrayList<>(capacities.list());
        drawn.removeAll(picked);
        drawn.addAll(picked);
        this.style = new PackStyle(capacities, picked, theme);
        this.theme = theme;
        for (PackCapacities.Bus bus : drawn) {
            lines.addSeries(series(new LineKey(lines.getSeriesCount(), style.legend(bus)), bus.points()));
        }
    }

    /**
     * The chart of a plan by its place in the study; it says so where the plan has no electric bus.
     *
     * @param picked place in the fleet whose buses are drawn strongly over the others; empty for all alike
     */
    public static Chart of(StudyResult result, int plan, OptionalInt picked, ChartTheme theme) {
        PackCapacityChart build = new PackCapacityChart(new PackCapacities(result, plan), picked, theme);
        PackCapacityWords words = new PackCapacityWords(build.capacities);
        JFreeChart chart = build.drawn.isEmpty() ? ChartFrame.without(TITLE, words.none(), theme) : build.chart();
        return new Chart(NAME, TITLE, chart, words.sentences(build.picked), words.data(), HEIGHT, ChartFrame.LEAST_HEIGHT,
                build::subject);
    }

    private JFreeChart chart() {
        XYPlot plot = new XYPlot(lines, yearAxis(), capacityAxis(), lineRenderer());
        ChartFrame.style(plot, theme);
        plot.setDataset(1, marks());
        plot.setRenderer(1, markRenderer());
        plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
        plot.setFixedLegendItems(style.legend());
        picked.forEach(bus -> plot.addAnnotation(style.label(bus)));
        return ChartFrame.around(plot, TITLE, "Plan “" + capacities.plan()
                + "”; present capacity over nominal, a line for each electric bus"
                + (capacities.ends().isEmpty() ? "; no pack comes to its end before the last year" : ""), theme);
    }

    private static XYSeries series(LineKey key, List<PackCapacities.Point> points) {
        XYSeries series = new XYSeries(key, false, true);
        points.forEach(p -> series.add(p.time(), 100 * p.health()));
        return series;
    }

    private XYSeriesCollection marks() {
        XYSeriesCollection marks = new XYSeriesCollection();
        for (PackCapacities.End end : capacities.ends()) {
            marks.addSeries(series(new LineKey(marks.getSeriesCount(), PackStyle.words(end.cause())), List.of(end.at())));
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
        for (int series = 0; series < drawn.size(); series++) {
            PackCapacities.Bus bus = drawn.get(series);
            renderer.setSeriesPaint(series, style.paint(bus));
            renderer.setSeriesStroke(series, style.stroke(bus));
            renderer.setSeriesToolTipGenerator(series, (data, s, item) -> bus.words(item));
        }
        return renderer;
    }

    private XYLineAndShapeRenderer markRenderer() {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
        for (int series = 0; series < capacities.ends().size(); series++) {
            PackCapacities.End end = capacities.ends().get(series);
            renderer.setSeriesPaint(series, theme.text());
            renderer.setSeriesShape(series, PackStyle.mark(end.cause()));
            renderer.setSeriesToolTipGenerator(series, (data, s, item) -> end.words());
        }
        return renderer;
    }

    private Optional<Subject> subject(ChartEntity entity) {
        if (!(entity instanceof XYItemEntity point)) {
            return Optional.empty();
        }
        int place = point.getDataset() == lines ? drawn.get(point.getSeriesIndex()).place()
                : capacities.ends().get(point.getSeriesIndex()).place();
        return Optional.of(new Subject(Subject.Kind.BUS, place));
    }
}
