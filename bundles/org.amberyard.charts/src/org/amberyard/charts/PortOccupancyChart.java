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
    private static final double SWAP_MIN = 8;
    private static final int MOST_TROUBLES = 2;

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
        ports.flows().forEach(f -> plot.addAnnotation(bar(f)));
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

    private DayStrip bar(PortRows.Flow flow) {
        Color flows = theme.passes(false);
        String tip = flow.label() + " charges " + span(flow.fromMin(), flow.toMin()) + " at "
                + Figures.size(flow.kw()) + " kW on average";
        return new DayStrip(flow.fromMin(), flow.toMin(), new DayStrip.Band(flow.row() + HALF_BAR, flow.row() + FLOW_TOP), "",
                tip, new DayStrip.Look(flows, flows, flows, theme.tickFont()));
    }

    private DayStrip swap(PortRows.Stay stay) {
        Color mark = theme.plan(2);
        return new DayStrip(stay.fromMin(), stay.fromMin() + SWAP_MIN * asked.kind().days().size(),
                new DayStrip.Band(stay.row() + HALF_BAR, stay.row() - HALF_BAR), "",
                "At " + ClockTickFormat.clock(stay.fromMin()) + " a person plugs in " + stay.label(),
                new DayStrip.Look(mark, mark, mark, theme.tickFont()));
    }

    private static String span(double fromMin, double toMin) {
        return ClockTickFormat.clock(fromMin) + " to " + ClockTickFormat.clock(toMin);
    }

    private LegendItemCollection legend() {
        LegendItemCollection items = new LegendItemCollection();
        items.add(ChartFrame.swatch("Plugged in", theme.passes(true)));
        items.add(ChartFrame.swatch("Energy flows", theme.passes(false)));
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
        return asked.heading(result) + ": " + buses + " buses at " + ports.rows().size() + " plugs"
                + (idle > 0 ? ", " + idle + " of them unused" : "") + "; " + swaps + ". "
                + (troubles.isEmpty() ? "Every bus leaves with the charge that it needs."
                        : String.join(" ", troubles.subList(0, Math.min(mostTroubles, troubles.size()))) + more);
    }

    private ChartData data() {
        List<List<Object>> rows = new ArrayList<>();
        ports.stays().forEach(s -> rows.add(List.of(ports.rows().get(s.row()).label(), s.label(), "plugged in",
                ClockTickFormat.clock(s.fromMin()), s.toMin() - s.fromMin(), s.kwh(), s.swap() ? "yes" : "no")));
        ports.flows().forEach(f -> rows.add(List.of(ports.rows().get(f.row()).label(), f.label(), "charges",
                ClockTickFormat.clock(f.fromMin()), f.toMin() - f.fromMin(), f.kwh(), "no")));
        return new ChartData(List.of("Plug", "Bus", "What", "From", "Length (min)", "Energy at the meter (kWh)", "Plug moved"),
                rows);
    }

    private Optional<Subject> subject(ChartEntity entity) {
        Integer bus = busByTip.get(entity.getToolTipText());
        return Optional.of(bus == null ? new Subject(Subject.Kind.PLAN, asked.plan())
                : new Subject(Subject.Kind.BUS, asked.yard(result).input().buses().get(bus).place()));
    }
}
