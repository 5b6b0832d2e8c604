package org.amberyard.charts;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Ellipse2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.plan.FleetYear;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.renderer.category.LineAndShapeRenderer;
import org.jfree.chart.renderer.category.StackedBarRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.data.category.DefaultCategoryDataset;

/** The fleet of a plan by year: electric and engine buses, and their ages. */
public final class FleetMixChart {
    private static final String NAME = "fleet_mix";
    private static final String TITLE = "Fleet by year";
    private static final String ELECTRIC = "Electric";
    private static final String ENGINE = "Engine";
    private static final String MEAN_AGE = "Mean age";
    private static final String OLDEST = "Oldest";
    private static final int HEIGHT = 430;
    private static final float LINE = 2.2f;
    private static final Shape POINT = new Ellipse2D.Double(-2.5, -2.5, 5, 5);
    /** Lines of the mean age and of the oldest bus. */
    private static final List<Stroke> AGES = List.of(new BasicStroke(LINE),
            new BasicStroke(LINE, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {6, 3}, 0));

    private final StudyResult result;
    private final int plan;
    private final List<FleetYear> years;
    private final ChartTheme theme;

    private FleetMixChart(StudyResult result, int plan, ChartTheme theme) {
        this.result = result;
        this.plan = plan;
        this.years = FleetYear.of(result.input(), result.plans().get(plan).fleet());
        this.theme = theme;
    }

    /** The chart of a plan by its place. Buses and ages have no unit system. */
    public static Chart of(StudyResult result, int plan, UnitSystem system, ChartTheme theme) {
        FleetMixChart build = new FleetMixChart(result, plan, theme);
        Subject behind = new Subject(Subject.Kind.PLAN, plan);
        return new Chart(NAME, TITLE, build.chart(), build.sentences(), build.data(), HEIGHT, ChartFrame.LEAST_HEIGHT,
                entity -> Optional.of(behind));
    }

    private Integer calendar(int year) {
        return result.input().baseYear() + year;
    }

    private JFreeChart chart() {
        CategoryPlot plot = new CategoryPlot(buses(), YearAxis.of(theme), ChartFrame.valueAxis("Buses",
                Figures.pattern("0"), theme), bars());
        ChartFrame.style(plot, theme);
        plot.getRangeAxis().setStandardTickUnits(NumberAxis.createIntegerTickUnits());
        plot.setRangeAxis(1, ChartFrame.valueAxis("Age (yr)", Figures.pattern("0"), theme));
        plot.setDataset(1, ages());
        plot.mapDatasetToRangeAxis(1, 1);
        plot.setRenderer(1, lines());
        plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
        plot.setFixedLegendItems(legend());
        return ChartFrame.around(plot, TITLE, caption(), theme);
    }

    private DefaultCategoryDataset buses() {
        DefaultCategoryDataset dataset = new DefaultCategoryDataset();
        years.forEach(y -> dataset.addValue(y.electric(), ELECTRIC, calendar(y.year())));
        years.forEach(y -> dataset.addValue(y.engine(), ENGINE, calendar(y.year())));
        return dataset;
    }

    private DefaultCategoryDataset ages() {
        DefaultCategoryDataset dataset = new DefaultCategoryDataset();
        years.forEach(y -> dataset.addValue(y.meanAgeYears(), MEAN_AGE, calendar(y.year())));
        years.forEach(y -> dataset.addValue(y.oldestAgeYears(), OLDEST, calendar(y.year())));
        return dataset;
    }

    private StackedBarRenderer bars() {
        StackedBarRenderer bars = new StackedBarRenderer();
        bars.setBarPainter(new StandardBarPainter());
        bars.setShadowVisible(false);
        bars.setSeriesPaint(0, theme.passes(false));
        bars.setSeriesPaint(1, theme.building());
        bars.setDefaultToolTipGenerator((data, row, column) -> data.getRowKey(row) + ", " + data.getColumnKey(column) + ": "
                + Figures.whole(data.getValue(row, column).doubleValue()) + " of "
                + (years.get(column).electric() + years.get(column).engine()) + " buses");
        return bars;
    }

    private LineAndShapeRenderer lines() {
        LineAndShapeRenderer lines = new LineAndShapeRenderer(true, true);
        for (int series = 0; series < AGES.size(); series++) {
            lines.setSeriesPaint(series, theme.text());
            lines.setSeriesShape(series, POINT);
            lines.setSeriesStroke(series, AGES.get(series));
        }
        lines.setDefaultToolTipGenerator((data, row, column) -> data.getRowKey(row) + ", " + data.getColumnKey(column) + ": "
                + Figures.years(data.getValue(row, column).doubleValue()));
        return lines;
    }

    private LegendItemCollection legend() {
        LegendItemCollection items = new LegendItemCollection();
        items.add(ChartFrame.swatch(ELECTRIC, theme.passes(false)));
        items.add(ChartFrame.swatch(ENGINE, theme.building()));
        items.add(ChartFrame.line(MEAN_AGE, AGES.get(0), theme.text()));
        items.add(ChartFrame.line(OLDEST, AGES.get(1), theme.text()));
        return items;
    }

    private String caption() {
        FleetYear first = years.get(0);
        FleetYear last = years.get(years.size() - 1);
        return "Plan “" + result.plans().get(plan).name() + "”: from " + first.electric() + " electric of "
                + (first.electric() + first.engine()) + " buses in " + calendar(0) + " to " + last.electric() + " of "
                + (last.electric() + last.engine()) + " in " + calendar(last.year()) + "; mean age "
                + Figures.years(first.meanAgeYears()) + " and " + Figures.years(last.meanAgeYears()) + ".";
    }

    private String sentences() {
        StringBuilder text = new StringBuilder(caption());
        years.stream().filter(y -> y.bought() > 0).forEach(y -> text.append(" ").append(calendar(y.year())).append(": ")
                .append(y.bought()).append(" bought, ").append(y.left()).append(" leave;"));
        return text.toString();
    }

    private ChartData data() {
        List<List<Object>> rows = new ArrayList<>();
        years.forEach(y -> rows.add(List.of(calendar(y.year()), y.electric(), y.engine(), y.spare(), y.meanAgeYears(),
                y.oldestAgeYears(), y.bought(), y.left())));
        return new ChartData(List.of("Year", "Electric buses", "Engine buses", "Spares", "Mean age (yr)", "Oldest (yr)",
                "Bought", "Sold or scrapped"), rows);
    }
}
