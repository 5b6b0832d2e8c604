package org.amberyard.charts;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.yard.MonthLoad;
import org.amberyard.core.yard.StretchLoad;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.entity.ChartEntity;
import org.jfree.chart.entity.XYItemEntity;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.StackedXYBarRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.TextAnchor;

/** Load behind the yard's service through a stretch of days, bus on bus, over the hours of the tariff's prices. */
public final class DayLoadChart {
    private static final String NAME = "day_load";
    private static final String TITLE = "Day load";
    private static final int HEIGHT = 460;
    private static final int LEAST = 225;
    private static final int MOST_IN_LEGEND = 6;
    private static final double HEADROOM = 1.25;
    /** The line of the limit stands below the prices even where the chart is low. */
    private static final double HEADROOM_ABOVE_LIMIT = 1.5;
    private static final int DAY_MIN = 1440;
    /** Share of the hours shown below which there is no room to write a price. */
    private static final double ROOM_FOR_PRICE = 0.06;
    /** Share of the service from which on its limit is drawn. */
    private static final double NEAR = 0.6;

    private final DayLoad load;
    private final PriceBands prices;
    private final DayLoadText text;
    private final StudyResult result;
    private final YardDay asked;
    private final ChartTheme theme;

    private DayLoadChart(StudyResult result, YardDay asked, MonthLoad month, StretchLoad stretch, ChartTheme theme) {
        this.result = result;
        this.asked = asked;
        this.load = new DayLoad(asked.yard(result), stretch);
        this.prices = PriceBands.of(asked.yard(result).input(), month, asked.kind());
        this.text = new DayLoadText(result, asked, load, prices);
        this.theme = theme;
    }

    /** The chart of a stretch; it says why where there is none. */
    public static Chart of(StudyResult result, YardDay asked, YardLoads loads, UnitSystem system, ChartTheme theme) {
        MonthLoad month = loads.of(asked.yard(result).input()).get(asked.month());
        Optional<StretchLoad> stretch = asked.of(month);
        if (asked.yard(result).input().buses().isEmpty() || stretch.isEmpty()) {
            return ChartFrame.none(NAME, TITLE, asked.none(result), HEIGHT, theme);
        }
        DayLoadChart build = new DayLoadChart(result, asked, month, stretch.get(), theme);
        return new Chart(NAME, TITLE, build.chart(), build.text.sentences(), build.text.data(), HEIGHT,
                LEAST, build::subject);
    }

    private JFreeChart chart() {
        XYPlot plot = new XYPlot(new StackedLoads(load),
                ChartFrame.clockAxis(asked.kind().days().size(), theme), powerAxis(), bars());
        ChartFrame.style(plot, theme);
        prices.bands().forEach(b -> plot.addDomainMarker(band(b), Layer.BACKGROUND));
        if (nearLimit()) {
            plot.addRangeMarker(limit());
        }
        plot.setFixedLegendItems(legend());
        return ChartFrame.around(plot, TITLE, text.caption(), theme);
    }

    private boolean nearLimit() {
        return load.servicePeakKw() >= NEAR * text.limitKw();
    }

    private NumberAxis powerAxis() {
        NumberAxis axis = ChartFrame.valueAxis("Load (kW)", Figures.pattern("#,##0"), theme);
        double top = nearLimit() ? Math.max(load.servicePeakKw(), text.limitKw()) : load.servicePeakKw();
        axis.setRange(0, Math.max(1, (nearLimit() ? HEADROOM_ABOVE_LIMIT : HEADROOM) * top));
        return axis;
    }

    private StackedXYBarRenderer bars() {
        StackedXYBarRenderer bars = new StackedXYBarRenderer(0);
        bars.setBarPainter(new WholePixelBars());
        bars.setShadowVisible(false);
        bars.setDrawBarOutline(false);
        for (int layer = 0; layer < load.layers().size(); layer++) {
            bars.setSeriesPaint(layer, paint(load.layers().get(layer)));
        }
        bars.setDefaultToolTipGenerator((data, series, item) -> load.layers().get(series).label() + ", " + text.moment(item)
                + ": " + Figures.size(load.layers().get(series).kw()[item]) + " kW");
        return bars;
    }

    private Color paint(DayLoad.Layer layer) {
        int below = load.layers().size() - load.buses().size();
        int place = load.layers().indexOf(layer);
        return place < below ? List.of(theme.building(), theme.quietText(), theme.plan(2)).get(place)
                : theme.oneOf(place - below, load.buses().size());
    }

    private IntervalMarker band(PriceBands.Band band) {
        List<Double> levels = prices.levels();
        IntervalMarker marker = new IntervalMarker(band.fromMin(), band.toMin(),
                theme.price(levels.indexOf(band.perKwh()), levels.size()));
        marker.setAlpha(1);
        boolean room = band.toMin() - band.fromMin() >= ROOM_FOR_PRICE * asked.kind().days().size() * DAY_MIN;
        marker.setLabel(room ? text.price(band) : null);
        marker.setLabelFont(theme.tickFont());
        marker.setLabelPaint(theme.quietText());
        marker.setLabelBackgroundColor(new Color(0, 0, 0, 0));
        marker.setLabelAnchor(RectangleAnchor.TOP);
        marker.setLabelTextAnchor(TextAnchor.TOP_CENTER);
        return marker;
    }

    private ValueMarker limit() {
        ValueMarker line = new ValueMarker(text.limitKw(), theme.fails(false), new BasicStroke(1.5f));
        line.setLabel("what the service carries");
        line.setLabelFont(theme.tickFont());
        line.setLabelPaint(theme.text());
        line.setLabelBackgroundColor(new Color(0, 0, 0, 0));
        line.setLabelAnchor(RectangleAnchor.TOP);
        line.setLabelTextAnchor(TextAnchor.TOP_CENTER);
        return line;
    }

    private LegendItemCollection legend() {
        LegendItemCollection items = new LegendItemCollection();
        load.layers().stream().filter(l -> l.bus() < 0).forEach(l -> items.add(ChartFrame.swatch(l.label(), paint(l))));
        List<DayLoad.Layer> buses = load.buses();
        if (buses.size() <= MOST_IN_LEGEND) {
            buses.forEach(b -> items.add(ChartFrame.swatch(b.label(), paint(b))));
        } else {
            items.add(ChartFrame.swatch("Charging, from " + buses.get(0).label() + " (first after noon)", paint(buses.get(0))));
            DayLoad.Layer last = buses.get(buses.size() - 1);
            items.add(ChartFrame.swatch("to " + last.label(), paint(last)));
        }
        items.add(ChartFrame.swatch("Dear hours (" + result.input().currency() + "/kWh)", theme.price(1, 2)));
        return items;
    }

    private Optional<Subject> subject(ChartEntity entity) {
        if (entity instanceof XYItemEntity bar && load.layers().get(bar.getSeriesIndex()).bus() >= 0) {
            int bus = load.layers().get(bar.getSeriesIndex()).bus();
            return Optional.of(new Subject(Subject.Kind.BUS, asked.yard(result).input().buses().get(bus).place()));
        }
        return Optional.of(new Subject(Subject.Kind.PLAN, asked.plan()));
    }
}
