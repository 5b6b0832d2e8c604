package org.amberyard.charts;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.amberyard.core.consumption.ConsumptionCurve;
import org.amberyard.core.consumption.CurveFit;
import org.amberyard.core.consumption.Residual;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItem;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.util.ShapeUtils;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/**
 * Logs of an electric type over outside temperature beside the consumption curve that was fitted to them: a stick from each log to
 * what the curve makes of it at the log's own speed, the curve at their mean speed, and the curve of the type so far.
 */
public final class CurveFitChart {
    private static final String NAME = "curve_fit";
    private static final String TITLE = "Measured and fitted";
    private static final int HEIGHT = 400;
    private static final int POINTS = 100;
    private static final float MARK = 5;
    private static final Shape DOT = new Ellipse2D.Double(-2, -2, 4, 4);
    private static final int FITTED = 1;
    private static final int BEFORE = 0;

    private final String type;
    private final CurveFit fit;
    private final Optional<ConsumptionCurve> before;
    private final UnitSystem system;
    private final ChartTheme theme;

    private CurveFitChart(String type, CurveFit fit, Optional<ConsumptionCurve> before, UnitSystem system, ChartTheme theme) {
        this.type = type;
        this.fit = fit;
        this.before = before.filter(curve -> !curve.equals(fit.curve()));
        this.system = system;
        this.theme = theme;
    }

    /**
     * The chart of a fit.
     *
     * @param type name of the electric type
     * @param before the curve that the type has so far
     */
    public static Chart of(String type, CurveFit fit, Optional<ConsumptionCurve> before, UnitSystem system, ChartTheme theme) {
        CurveFitChart build = new CurveFitChart(type, fit, before, system, theme);
        return new Chart(NAME, TITLE, build.chart(), build.sentences(), build.data(), HEIGHT, ChartFrame.LEAST_HEIGHT, Subjects.NONE);
    }

    private JFreeChart chart() {
        XYPlot plot = new XYPlot(lines(), airAxis(), useAxis(), lineRenderer());
        ChartFrame.style(plot, theme);
        plot.setDataset(1, sticks());
        plot.setRenderer(1, stickRenderer());
        plot.setDataset(2, logs());
        plot.setRenderer(2, logRenderer());
        plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
        plot.setFixedLegendItems(legend());
        return ChartFrame.around(plot, TITLE, caption(), theme);
    }

    private double air(double celsius) {
        return Unit.CELSIUS.show(celsius, system);
    }

    private double use(double kwhPerKm) {
        return Unit.KWH_PER_KM.show(kwhPerKm, system);
    }

    private static double fitted(Residual residual) {
        return residual.fittedKwh() / residual.entry().km();
    }

    private XYSeriesCollection lines() {
        XYSeriesCollection lines = new XYSeriesCollection();
        lines.addSeries(line("before", before));
        lines.addSeries(line("fitted", Optional.of(fit.curve())));
        return lines;
    }

    /** A curve at the mean speed from the coldest to the warmest log; empty where there is none. */
    private XYSeries line(String key, Optional<ConsumptionCurve> curve) {
        XYSeries line = new XYSeries(key, false, true);
        OptionalDouble speedKmh = fit.meanSpeedKmh();
        if (curve.isPresent() && speedKmh.isPresent()) {
            IntStream.rangeClosed(0, POINTS).mapToDouble(i -> fit.coldestC() + (fit.warmestC() - fit.coldestC()) * i / POINTS)
                    .forEach(airC -> line.add(air(airC), use(curve.get().kwhPerKm(speedKmh.getAsDouble(), airC))));
        }
        return line;
    }

    private XYSeriesCollection sticks() {
        XYSeriesCollection sticks = new XYSeriesCollection();
        for (Residual residual : fit.residuals()) {
            XYSeries stick = new XYSeries(sticks.getSeriesCount(), false, true);
            stick.add(air(residual.entry().outsideC()), use(residual.entry().kwhPerKm()));
            stick.add(air(residual.entry().outsideC()), use(fitted(residual)));
            sticks.addSeries(stick);
        }
        return sticks;
    }

    private XYSeriesCollection logs() {
        XYSeries measured = new XYSeries("measured", false, true);
        XYSeries fitted = new XYSeries("by the curve", false, true);
        for (Residual residual : fit.residuals()) {
            measured.add(air(residual.entry().outsideC()), use(residual.entry().kwhPerKm()));
            fitted.add(air(residual.entry().outsideC()), use(fitted(residual)));
        }
        XYSeriesCollection logs = new XYSeriesCollection(fitted);
        logs.addSeries(measured);
        return logs;
    }

    private NumberAxis airAxis() {
        NumberAxis axis = ChartFrame.valueAxis("Outside temperature (" + unit(Unit.CELSIUS) + ")", Figures.pattern("0;−0"), theme);
        axis.setAutoRangeIncludesZero(false);
        return axis;
    }

    private NumberAxis useAxis() {
        NumberAxis axis = ChartFrame.valueAxis(unit(Unit.KWH_PER_KM), Figures.pattern("0.0#"), theme);
        axis.setAutoRangeIncludesZero(false);
        return axis;
    }

    /** Units of neither axis name a currency. */
    private String unit(Unit unit) {
        return unit.symbol(system, "");
    }

    private XYLineAndShapeRenderer lineRenderer() {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDrawSeriesLineAsPath(true);
        for (int place : new int[] {BEFORE, FITTED}) {
            renderer.setSeriesPaint(place, theme.plan(place));
            renderer.setSeriesStroke(place, theme.planStroke(FITTED - place));
        }
        return renderer;
    }

    private XYLineAndShapeRenderer stickRenderer() {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setAutoPopulateSeriesPaint(false);
        renderer.setAutoPopulateSeriesStroke(false);
        renderer.setDefaultPaint(theme.quietText());
        renderer.setDefaultStroke(ChartFrame.THIN);
        return renderer;
    }

    private XYLineAndShapeRenderer logRenderer() {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
        renderer.setUseFillPaint(true);
        renderer.setUseOutlinePaint(true);
        renderer.setSeriesShape(0, DOT);
        renderer.setSeriesFillPaint(0, theme.quietText());
        renderer.setSeriesOutlinePaint(0, theme.quietText());
        renderer.setSeriesShape(1, ShapeUtils.createDiamond(MARK));
        renderer.setSeriesFillPaint(1, theme.background());
        renderer.setSeriesOutlinePaint(1, theme.plan(FITTED));
        renderer.setSeriesOutlineStroke(1, new BasicStroke(2));
        renderer.setDefaultToolTipGenerator((data, series, item) -> tip(fit.residuals().get(item)));
        return renderer;
    }

    private String tip(Residual residual) {
        return Figures.whole(air(residual.entry().outsideC())) + " " + unit(Unit.CELSIUS) + ": measured " + told(residual.entry().kwhPerKm())
                + ", by the curve " + told(fitted(residual)) + " (" + percent(residual) + ")";
    }

    private String told(double kwhPerKm) {
        return Figures.pattern("0.00").format(use(kwhPerKm)) + " " + unit(Unit.KWH_PER_KM);
    }

    private static String percent(Residual residual) {
        return Figures.signed(100 * residual.share()) + " %";
    }

    private LegendItemCollection legend() {
        LegendItemCollection items = new LegendItemCollection();
        items.add(new LegendItem("measured", null, null, null, ShapeUtils.createDiamond(MARK), theme.background(), new BasicStroke(2),
                theme.plan(FITTED)));
        items.add(new LegendItem("by the curve at the speed of the log", null, null, null, DOT, theme.quietText()));
        if (fit.meanSpeedKmh().isPresent()) {
            items.add(ChartFrame.line("fitted curve", theme.planStroke(0), theme.plan(FITTED)));
            if (before.isPresent()) {
                items.add(ChartFrame.line("curve so far", theme.planStroke(1), theme.plan(BEFORE)));
            }
        }
        return items;
    }

    private String caption() {
        OptionalDouble speed = fit.meanSpeedKmh();
        return type + ", " + fit.residuals().size() + " logs" + (speed.isEmpty() ? "" : "; curves at their mean speed of "
                + Figures.whole(Unit.KM_PER_HOUR.show(speed.getAsDouble(), system)) + " " + unit(Unit.KM_PER_HOUR));
    }

    private String sentences() {
        Residual worst = fit.residuals().stream().max((a, b) -> Double.compare(Math.abs(a.share()), Math.abs(b.share()))).orElseThrow();
        return caption() + ". The farthest off, " + tip(worst) + ".";
    }

    private ChartData data() {
        return new ChartData(List.of("Outside temperature (" + unit(Unit.CELSIUS) + ")", "Measured (" + unit(Unit.KWH_PER_KM) + ")",
                "By the curve (" + unit(Unit.KWH_PER_KM) + ")", "Difference (%)"),
                fit.residuals().stream().map(r -> List.<Object>of(
                        air(r.entry().outsideC()), use(r.entry().kwhPerKm()), use(fitted(r)), 100 * r.share())).toList());
    }
}
