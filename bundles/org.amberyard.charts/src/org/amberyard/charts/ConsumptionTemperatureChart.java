package org.amberyard.charts;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
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

/** Energy per distance of a route by outside temperature, a line for each electric type that fits, marks for measurements. */
public final class ConsumptionTemperatureChart {
    private static final String NAME = "consumption_by_temperature";
    private static final String TITLE = "Consumption by temperature";
    private static final int HEIGHT = 440;
    private static final float MARK = 5;

    private final StudyResult result;
    private final int route;
    private final TemperatureCurves curves;
    private final ChartTheme theme;

    private ConsumptionTemperatureChart(StudyResult result, int route, UnitSystem system, ChartTheme theme) {
        this.result = result;
        this.route = route;
        this.curves = new TemperatureCurves(result, route, system);
        this.theme = theme;
    }

    /** The chart of a route by its place in the study; it says why where there is nothing to show. */
    public static Chart of(StudyResult result, int route, UnitSystem system, ChartTheme theme) {
        ConsumptionTemperatureChart build = new ConsumptionTemperatureChart(result, route, system, theme);
        JFreeChart chart = build.curves.curves().isEmpty() ? ChartFrame.without(TITLE, build.curves.none(), theme)
                : build.chart();
        return new Chart(NAME, TITLE, chart, build.curves.sentences(), build.curves.data(), HEIGHT,
                ChartFrame.LEAST_HEIGHT, build::subject);
    }

    private JFreeChart chart() {
        XYPlot plot = new XYPlot(dataset(true), airAxis(), useAxis(), renderer(true));
        ChartFrame.style(plot, theme);
        plot.setDataset(1, dataset(false));
        plot.setRenderer(1, renderer(false));
        plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
        plot.setFixedLegendItems(legend());
        return ChartFrame.around(plot, TITLE, subtitle(), theme);
    }

    private String subtitle() {
        int type = curves.curves().get(0).type();
        double factor = result.duty().calibration(route).factor(result.input().types().get(type).spec());
        return "Route " + curves.route() + ", net energy from the battery on sunless days of one temperature"
                + (factor == 1 ? "" : "; the model is multiplied by " + Figures.pattern("0.00").format(factor)
                        + ", as the measurements on the route ask");
    }

    private XYSeriesCollection dataset(boolean lines) {
        XYSeriesCollection dataset = new XYSeriesCollection();
        for (TemperatureCurves.Curve curve : curves.curves()) {
            LineKey key = new LineKey(curve.type(), lines ? curve.name() : measured(curve));
            XYSeries series = new XYSeries(key, false, true);
            (lines ? curve.points() : curve.measured()).forEach(p -> series.add(p.air(), p.perDistance()));
            dataset.addSeries(series);
        }
        return dataset;
    }

    private NumberAxis airAxis() {
        NumberAxis axis = ChartFrame.valueAxis("Outside temperature (" + curves.airUnit() + ")", Figures.pattern("0;−0"),
                theme);
        axis.setAutoRangeIncludesZero(false);
        axis.setLowerMargin(0.01);
        axis.setUpperMargin(0.01);
        return axis;
    }

    private NumberAxis useAxis() {
        NumberAxis axis = ChartFrame.valueAxis(curves.unit(), Figures.pattern("0.0#"), theme);
        axis.setUpperMargin(0.05);
        return axis;
    }

    private XYLineAndShapeRenderer renderer(boolean lines) {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(lines, !lines);
        renderer.setDrawSeriesLineAsPath(lines);
        renderer.setUseFillPaint(true);
        renderer.setUseOutlinePaint(true);
        renderer.setDefaultFillPaint(theme.background());
        for (int series = 0; series < curves.curves().size(); series++) {
            TemperatureCurves.Curve curve = curves.curves().get(series);
            List<TemperatureCurves.Point> points = lines ? curve.points() : curve.measured();
            renderer.setSeriesPaint(series, theme.plan(series + 1));
            renderer.setSeriesStroke(series, theme.planStroke(series));
            renderer.setSeriesShape(series, mark(series));
            renderer.setSeriesOutlinePaint(series, theme.plan(series + 1));
            renderer.setSeriesOutlineStroke(series, new BasicStroke(2));
            renderer.setSeriesToolTipGenerator(series, (data, place, item) -> curve.name() + (lines ? " at " : ", measured at ")
                    + curves.air(points.get(item)) + ": " + curves.use(points.get(item)));
        }
        return renderer;
    }

    private static Shape mark(int series) {
        return List.of(ShapeUtils.createDiamond(MARK), ShapeUtils.createUpTriangle(MARK), ShapeUtils.createDownTriangle(MARK))
                .get(series % 3);
    }

    private static String measured(TemperatureCurves.Curve curve) {
        return curve.name() + ", measured";
    }

    private LegendItemCollection legend() {
        LegendItemCollection items = new LegendItemCollection();
        for (int series = 0; series < curves.curves().size(); series++) {
            TemperatureCurves.Curve curve = curves.curves().get(series);
            items.add(ChartFrame.line(curve.name(), theme.planStroke(series), theme.plan(series + 1)));
            if (!curve.measured().isEmpty()) {
                items.add(new LegendItem(measured(curve), null, null, null, mark(series), theme.background(),
                        new BasicStroke(2), theme.plan(series + 1)));
            }
        }
        return items;
    }

    private Optional<Subject> subject(ChartEntity entity) {
        return entity instanceof XYItemEntity point
                ? Optional.of(new Subject(Subject.Kind.TYPE, curves.curves().get(point.getSeriesIndex()).type()))
                : Optional.empty();
    }
}
