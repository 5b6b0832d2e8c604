package org.amberyard.charts;

import java.awt.BasicStroke;
import java.awt.geom.Ellipse2D;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.amberyard.core.duty.BlockCheck.Moment;
import org.amberyard.core.duty.DayBlock;
import org.amberyard.core.plan.BusDay;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.labels.ItemLabelAnchor;
import org.jfree.chart.labels.ItemLabelPosition;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYAreaRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** State of charge of one electric bus through a day and the night after it, above what must be left. */
public final class ChargeThroughDayChart {
    private static final String NAME = "charge_through_day";
    private static final String TITLE = "Charge through the day";
    private static final int HEIGHT = 440;
    private static final double TICK_SHARE = 20;
    private static final double TICK_MIN = 120;
    private static final double AROUND_MIN = 30;

    private final StudyResult result;
    private final BusDay day;
    private final ChargeDayText text;
    private final ChargePath path;
    private final ChartTheme theme;

    private ChargeThroughDayChart(StudyResult result, BusDay day, UnitSystem system, ChartTheme theme) {
        this.result = result;
        this.day = day;
        this.text = new ChargeDayText(result, day, system);
        this.path = ChargePath.of(day, result.input().depot().window());
        this.theme = theme;
    }

    /** The chart of a day of a bus of a plan; it says why where there is none. */
    public static Chart of(StudyResult result, int plan, BusDay.Asked asked, UnitSystem system, ChartTheme theme) {
        Optional<Subject> bus = Optional.of(new Subject(Subject.Kind.BUS, asked.place()));
        Optional<BusDay> day = BusDay.of(result, plan, asked);
        if (day.isEmpty()) {
            String reason = new NoBusDay(result, plan, asked).reason();
            ChartData none = new ChartData(ChargeDayText.columns(), List.of());
            return new Chart(NAME, TITLE, ChartFrame.without(TITLE, reason, theme), reason, none, HEIGHT,
                    ChartFrame.LEAST_HEIGHT, entity -> bus);
        }
        ChargeThroughDayChart build = new ChargeThroughDayChart(result, day.get(), system, theme);
        return new Chart(NAME, TITLE, build.chart(plan), build.text.sentences(), build.text.data(), HEIGHT,
                ChartFrame.LEAST_HEIGHT, entity -> bus);
    }

    private JFreeChart chart(int plan) {
        XYPlot plot = new XYPlot(dataset("Charge", path.points(), Moment::chargeShare), clockAxis(), chargeAxis(), line());
        ChartFrame.style(plot, theme);
        plot.setDataset(1, dataset("Must be left", path.points(), Moment::floorShare));
        plot.setRenderer(1, floor());
        plot.setDatasetRenderingOrder(DatasetRenderingOrder.REVERSE);
        plot.setFixedLegendItems(legend());
        addStrip(plot);
        return ChartFrame.around(plot, TITLE, text.answer() + "\nPlan “" + result.plans().get(plan).name() + "”; "
                + text.caption(), theme);
    }

    private static XYSeriesCollection dataset(String name, List<Moment> points, ToDoubleFunction<Moment> share) {
        XYSeries series = new XYSeries(name, false, true);
        points.forEach(p -> series.add(p.minute(), 100 * share.applyAsDouble(p)));
        return new XYSeriesCollection(series);
    }

    private NumberAxis clockAxis() {
        NumberAxis axis = new NumberAxis(null);
        ChartFrame.style(axis, theme);
        axis.setNumberFormatOverride(new ClockTickFormat());
        axis.setTickUnit(new NumberTickUnit(TICK_MIN));
        List<Moment> points = path.points();
        axis.setRange(points.get(0).minute() - AROUND_MIN, points.get(points.size() - 1).minute() + AROUND_MIN);
        return axis;
    }

    /** The lowest full tick of the charge; the strip lies below it. */
    private double lowestTick() {
        return Math.min(0, Math.floor(100 * text.lowest().chargeShare() / TICK_SHARE) * TICK_SHARE);
    }

    private NumberAxis chargeAxis() {
        NumberAxis axis = ChartFrame.valueAxis("Charge (%)", Figures.pattern("0;−0"), theme);
        axis.setTickUnit(new NumberTickUnit(TICK_SHARE));
        axis.setRange(lowestTick() - 19, 108);
        return axis;
    }

    private XYLineAndShapeRenderer line() {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, true);
        renderer.setSeriesPaint(0, theme.plan(1));
        renderer.setSeriesStroke(0, new BasicStroke(2.4f));
        renderer.setSeriesShape(0, new Ellipse2D.Double(-3, -3, 6, 6));
        renderer.setSeriesItemLabelsVisible(0, true);
        renderer.setSeriesItemLabelFont(0, theme.tickFont());
        renderer.setSeriesItemLabelPaint(0, theme.text());
        renderer.setSeriesItemLabelGenerator(0, (data, series, item) -> label(item));
        renderer.setSeriesPositiveItemLabelPosition(0,
                new ItemLabelPosition(ItemLabelAnchor.OUTSIDE6, TextAnchor.TOP_CENTER));
        renderer.setDefaultToolTipGenerator((data, series, item) -> ClockTickFormat.clock(data.getXValue(series, item)) + ": "
                + Figures.wholePercent(data.getYValue(series, item) / 100));
        return renderer;
    }

    /** The run that ends at a point and the charge after it. */
    private String label(int point) {
        boolean arrival = point % 2 == 1 && point < 2 * day.block().legs().size();
        return arrival ? day.block().legs().get(point / 2).name() + ": "
                + Figures.wholePercent(path.points().get(point).chargeShare()) : null;
    }

    private XYAreaRenderer floor() {
        XYAreaRenderer renderer = new XYAreaRenderer(XYAreaRenderer.AREA);
        renderer.setSeriesPaint(0, theme.fails(true));
        renderer.setDefaultToolTipGenerator((data, series, item) -> ClockTickFormat.clock(data.getXValue(series, item)) + ": "
                + Figures.wholePercent(data.getYValue(series, item) / 100) + " must be left");
        return renderer;
    }

    private void addStrip(XYPlot plot) {
        DayStrip.Band band = new DayStrip.Band(lowestTick() - 18, lowestTick() - 2);
        for (DayBlock.Leg leg : day.block().legs()) {
            plot.addAnnotation(new DayStrip(leg.departureMin(), leg.arrivalMin(), band, leg.name(), DayStrip.Look.run(theme)));
        }
        for (ChargePath.Charging charging : path.charging()) {
            String label = "+" + Figures.whole(charging.gainShare() * day.usableKwh()) + " kWh";
            plot.addAnnotation(new DayStrip(charging.fromMin(), charging.toMin(), band, label, DayStrip.Look.atPlug(theme)));
        }
    }

    private LegendItemCollection legend() {
        LegendItemCollection items = new LegendItemCollection();
        items.add(ChartFrame.swatch("Charge", theme.plan(1)));
        items.add(ChartFrame.swatch("Must be left: reserve and what a cold pack does not give", theme.fails(true)));
        items.add(ChartFrame.swatch("Run", theme.quietText()));
        items.add(ChartFrame.swatch("Charging", theme.passes(true)));
        return items;
    }
}
