package org.amberyard.charts;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.MonthNames;
import org.amberyard.core.units.UnitSystem;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.entity.ChartEntity;
import org.jfree.chart.entity.XYItemEntity;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.DefaultXYDataset;

/** The range margin of every route on the worst operated day of every month, in words and colours. */
public final class RangeHeatMap {
    private static final String TITLE = "Range by month";
    private static final int HEIGHT_AROUND = 170;
    private static final int HEIGHT_PER_ROUTE = 34;
    private static final int LONGEST_LABEL = 30;

    private final RangeMonths months;
    private final ChartTheme theme;

    private RangeHeatMap(StudyResult result, int plan, UnitSystem system, ChartTheme theme) {
        this.months = new RangeMonths(result, plan, system);
        this.theme = theme;
    }

    /** The chart of the first plan that is compared with the baseline, else of the baseline. */
    public static Chart of(StudyResult result, UnitSystem system, ChartTheme theme) {
        return of(result, FirstPlan.of(result), system, theme);
    }

    /** The chart of a plan by its place in the study. */
    public static Chart of(StudyResult result, int plan, UnitSystem system, ChartTheme theme) {
        RangeHeatMap build = new RangeHeatMap(result, plan, system, theme);
        int height = HEIGHT_AROUND + HEIGHT_PER_ROUTE * build.months.rows().size();
        return new Chart("range_by_month", TITLE, build.chart(), new RangeMonthsText(build.months).sentences(),
                build.months.data(), height, ChartFrame.least(height), build::subject);
    }

    private JFreeChart chart() {
        XYPlot plot = new XYPlot(dataset(), monthAxis(), routeAxis(), cells());
        ChartFrame.style(plot, theme);
        plot.setDomainAxisLocation(AxisLocation.TOP_OR_LEFT);
        plot.setRangeGridlinesVisible(false);
        plot.setRangeZeroBaselineVisible(false);
        plot.setNoDataMessage("The study has no routes");
        plot.setFixedLegendItems(legend());
        return ChartFrame.around(plot, TITLE, "Distance left above the reserve on the worst operated day (" + months.unit()
                + ").  " + months.caption(), theme);
    }

    private DefaultXYDataset dataset() {
        int cells = months.rows().size() * Climate.MONTHS;
        DefaultXYDataset dataset = new DefaultXYDataset();
        dataset.addSeries("Range", new double[][] {IntStream.range(0, cells).mapToDouble(i -> i % Climate.MONTHS).toArray(),
            IntStream.range(0, cells).mapToDouble(RangeHeatMap::route).toArray()});
        return dataset;
    }

    private static int route(int cell) {
        return cell / Climate.MONTHS;
    }

    private SymbolAxis monthAxis() {
        SymbolAxis axis = axis(IntStream.range(0, Climate.MONTHS).mapToObj(MonthNames::brief));
        axis.setRange(-0.5, Climate.MONTHS - 0.5);
        return axis;
    }

    private SymbolAxis routeAxis() {
        SymbolAxis axis = axis(months.rows().stream().map(r -> shortened(r.label())));
        axis.setInverted(true);
        axis.setRange(-0.5, Math.max(1, months.rows().size()) - 0.5);
        return axis;
    }

    private SymbolAxis axis(Stream<String> labels) {
        SymbolAxis axis = new SymbolAxis(null, labels.toArray(String[]::new));
        ChartFrame.style(axis, theme);
        axis.setGridBandsVisible(false);
        axis.setTickMarksVisible(false);
        axis.setAxisLineVisible(false);
        return axis;
    }

    private static String shortened(String label) {
        return label.length() <= LONGEST_LABEL ? label : label.substring(0, LONGEST_LABEL - 1) + "…";
    }

    private HeatCells cells() {
        List<RangeMonths.Cell> all = months.rows().stream().flatMap(r -> r.cells().stream()).toList();
        HeatCells cells = new HeatCells(all, all.stream().map(months::lines).toList(), theme);
        cells.setDefaultToolTipGenerator((data, series, item) -> months.tip(months.rows().get(route(item)), all.get(item)));
        return cells;
    }

    private Optional<Subject> subject(ChartEntity entity) {
        return entity instanceof XYItemEntity cell
                ? Optional.of(new Subject(Subject.Kind.ROUTE, months.rows().get(route(cell.getItem())).answer().route()))
                : Optional.empty();
    }

    private LegendItemCollection legend() {
        LegendItemCollection items = new LegendItemCollection();
        items.add(ChartFrame.swatch("“+”: passes to the end of the pack's service, distance with an aged pack",
                HeatCells.ground(MonthStanding.FOR_LIFE, theme)));
        items.add(ChartFrame.swatch("“aged”: passes while new, short with an aged pack",
                HeatCells.ground(MonthStanding.NEW_ONLY, theme)));
        items.add(ChartFrame.swatch("“fails”: short with a new pack", HeatCells.ground(MonthStanding.FAILS, theme)));
        return items;
    }
}
