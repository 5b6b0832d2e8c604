package org.amberyard.charts;

import java.awt.Color;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.yard.StretchLoad;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.entity.ChartEntity;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.XYSeriesCollection;

/** Which bus stands at which plug of the yard when, and when energy flows. */
public final class PortOccupancyChart {
    private static final String NAME = "port_occupancy";
    private static final String TITLE = "Ports through the day";
    private static final int HEIGHT_AROUND = 150;
    private static final int HEIGHT_PER_ROW = 26;
    private static final int LEAST_PER_ROW = 19;
    private static final double HALF_BAR = 0.42;
    private static final double FLOW_TOP = 0.2;
    private static final double HEAT_BOTTOM = -0.28;
    private static final int HEAT_COLOR = 4;
    private static final double SWAP_MIN = 8;
    private static final int MOST_TROUBLES = 2;
    private static final String HEATED = " is warmed or cooled through its plug ";

    private final StudyResult result;
    private final YardDay asked;
    private final PortRows ports;
    private final ChartTheme theme;
    private final Map<String, Integer> busByTip = new HashMap<>();

    private PortOccupancyChart(StudyResult result, YardDay asked, StretchLoad stretch, ChartTheme theme) {
        this.result = result;
        this.asked = asked;
        this.ports = new PortRows(stretch);
        this.theme = theme;
    }

    /** The chart of a stretch; it says why where there is none. Times have no unit system. */
    public static Chart of(StudyResult result, YardDay asked, YardLoads loads, UnitSystem system, ChartTheme theme) {
        Optional<StretchLoad> stretch = asked.of(loads.of(asked.yard(result).input()).get(asked.month()));
        if (asked.yard(result).input().buses().isEmpty() || stretch.isEmpty()) {
            return ChartFrame.none(NAME, TITLE, asked.none(result), HEIGHT_AROUND, theme);
        }
        PortOccupancyChart build = new PortOccupancyChart(result, asked, stretch.get(), theme);
        int rows = build.ports.rows().size();
        return new Chart(NAME, TITLE, build.chart(), build.words(Integer.MAX_VALUE), build.data(),
                HEIGHT_AROUND + HEIGHT_PER_ROW * rows, HEIGHT_AROUND + LEAST_PER_ROW * rows, build::subject);
    }

    private JFreeChart chart() {
        XYPlot plot = new XYPlot(new XYSeriesCollection(), ChartFrame.clockAxis(asked.kind().days().size(), theme),
                portAxis(), null);
        ChartFrame.style(plot, theme);
        plot.setRangeGridlinesVisible(false);
        plot.setRangeZeroBaselineVisible(false);
        ports.stays().forEach(s -> plot.addAnnotation(bar(s)));
        ports.heatAlone().forEach(f -> plot.addAnnotation(plugged(f)));
        ports.flows().forEach(f -> plot.addAnnotation(bar(f, " charges ", new DayStrip.Band(f.row() + HALF_BAR, f.row() + FLOW_TOP),
                solid(theme.passes(false)))));
        ports.heat().forEach(f -> plot.addAnnotation(bar(f, HEATED, new DayStrip.Band(f.row() + HEAT_BOTTOM, f.row() - HALF_BAR),
                solid(theme.plan(HEAT_COLOR)))));
        ports.stays().stream().filter(PortRows.Stay::swap).forEach(s -> plot.addAnnotation(swap(s)));
        plot.setFixedLegendItems(legend());
        return ChartFrame.around(plot, TITLE, words(MOST_TROUBLES), theme);
    }

    private SymbolAxis portAxis() {
        SymbolAxis axis = new SymbolAxis(null, ports.rows().stream().map(PortRows.Row::label).toArray(String[]::new));
        ChartFrame.style(axis, theme);
        axis.setInverted(true);
        axis.setGridBandsVisible(false);
        axis.setRange(-0.5, ports.rows().size() - 0.5);
        return axis;
    }

    /** The axis is inverted, so the lower value is the upper edge. */
    private DayStrip bar(PortRows.Stay stay) {
        String tip = stay.label() + " plugged in " + span(stay.fromMin(), stay.toMin()) + ", " + Figures.size(stay.kwh())
                + " kWh at the meter" + (stay.swap() ? ", plugged in by a person" : "");
        busByTip.put(tip, stay.bus());
        return new DayStrip(stay.fromMin(), stay.toMin(), new DayStrip.Band(stay.row() + HALF_BAR, stay.row() - HALF_BAR),
                stay.label(), tip, DayStrip.Look.atPlug(theme));
    }

    private DayStrip plugged(PortRows.Flow heat) {
        String tip = heat.label() + " plugged in " + span(heat.fromMin(), heat.toMin()) + " for heat or cooling, not charged";
        busByTip.put(tip, heat.bus());
        return new DayStrip(heat.fromMin(), heat.toMin(), new DayStrip.Band(heat.row() + HALF_BAR, heat.row() - HALF_BAR),
                heat.label(), tip, DayStrip.Look.atPlug(theme));
    }

    private static DayStrip bar(PortRows.Flow flow, String what, DayStrip.Band band, DayStrip.Look look) {
        String tip = flow.label() + what + span(flow.fromMin(), flow.toMin()) + " at " + Figures.size(flow.kw()) + " kW on average";
        return new DayStrip(flow.fromMin(), flow.toMin(), band, "", tip, look);
    }

    private DayStrip.Look solid(Color color) {
        return new DayStrip.Look(color, color, color, theme.tickFont());
    }

    private DayStrip swap(PortRows.Stay stay) {
        return new DayStrip(stay.fromMin(), stay.fromMin() + SWAP_MIN * asked.kind().days().size(),
                new DayStrip.Band(stay.row() + HALF_BAR, stay.row() - HALF_BAR), "",
                "At " + ClockTickFormat.clock(stay.fromMin()) + " a person plugs in " + stay.label(),
                solid(theme.plan(2)));
    }

    private static String span(double fromMin, double toMin) {
        return ClockTickFormat.clock(fromMin) + " to " + ClockTickFormat.clock(toMin);
    }

    private LegendItemCollection legend() {
        LegendItemCollection items = new LegendItemCollection();
        items.add(ChartFrame.swatch("Plugged in", theme.passes(true)));
        items.add(ChartFrame.swatch("Battery is charged", theme.passes(false)));
        if (!ports.heat().isEmpty()) {
            items.add(ChartFrame.swatch("Cabin or pack is warmed or cooled", theme.plan(HEAT_COLOR)));
        }
        if (ports.swaps() > 0) {
            items.add(ChartFrame.swatch("A person moves the plug", theme.plan(2)));
        }
        return items;
    }

    private String words(int mostTroubles) {
        long buses = ports.stays().stream().map(PortRows.Stay::bus).distinct().count();
        long idle = ports.rows().size() - ports.stays().stream().map(PortRows.Stay::row).distinct().count();
        String swaps = ports.swaps() == 0 ? "no plug is moved"
                : ports.swaps() + (ports.swaps() == 1 ? " plug swap" : " plug swaps");
        List<String> troubles = ports.troubles();
        String more = troubles.size() > mostTroubles ? " And " + (troubles.size() - mostTroubles) + " more." : "";
        return asked.heading(result) + ": " + buses + (buses == 1 ? " bus at " : " buses at ") + ports.rows().size()
                + (ports.rows().size() == 1 ? " plug" : " plugs")
                + (idle > 0 ? ", " + idle + " of them unused" : "") + "; " + swaps + ". "
                + (troubles.isEmpty() ? "Every bus leaves with the charge that it needs."
                        : String.join(" ", troubles.subList(0, Math.min(mostTroubles, troubles.size()))) + more);
    }

    private ChartData data() {
        List<List<Object>> rows = new ArrayList<>();
        ports.stays().forEach(s -> rows.add(List.of(ports.rows().get(s.row()).label(), s.label(), "plugged in",
                ClockTickFormat.clock(s.fromMin()), s.toMin() - s.fromMin(), s.kwh(), s.swap() ? "yes" : "no")));
        ports.flows().forEach(f -> rows.add(row(f, "charges")));
        ports.heat().forEach(f -> rows.add(row(f, "heat or cooling")));
        return new ChartData(List.of("Plug", "Bus", "What", "From", "Length (min)", "Energy at the meter (kWh)", "Plug moved"),
                rows);
    }

    private List<Object> row(PortRows.Flow flow, String what) {
        return List.of(ports.rows().get(flow.row()).label(), flow.label(), what, ClockTickFormat.clock(flow.fromMin()),
                flow.toMin() - flow.fromMin(), flow.kwh(), "no");
    }

    private Optional<Subject> subject(ChartEntity entity) {
        Integer bus = busByTip.get(entity.getToolTipText());
        return Optional.of(bus == null ? new Subject(Subject.Kind.PLAN, asked.plan())
                : new Subject(Subject.Kind.BUS, asked.yard(result).input().buses().get(bus).place()));
    }
}
