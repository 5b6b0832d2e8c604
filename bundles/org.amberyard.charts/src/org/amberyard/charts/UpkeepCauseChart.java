package org.amberyard.charts;

import java.text.DecimalFormat;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.UpkeepCalibrations;
import org.amberyard.core.plan.UpkeepYear;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.upkeep.UpkeepCalibration;
import org.amberyard.core.upkeep.UpkeepCause;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.renderer.category.BarRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.data.category.DefaultCategoryDataset;

/** Upkeep per distance by cause in a plan, over all years: engine buses beside electric ones. */
public final class UpkeepCauseChart {
    private static final String NAME = "upkeep_by_cause";
    private static final String TITLE = "Upkeep by cause";
    private static final List<String> BUSES = List.of("Engine buses", "Electric buses");
    private static final int HEIGHT_AROUND = 140;
    private static final int HEIGHT_PER_CAUSE = 38;

    private final StudyResult result;
    private final PlanResult plan;
    private final UnitSystem system;
    private final ChartTheme theme;
    private final List<UpkeepCause> shown;

    private UpkeepCauseChart(StudyResult result, int plan, UnitSystem system, ChartTheme theme) {
        this.result = result;
        this.plan = result.plans().get(plan);
        this.system = system;
        this.theme = theme;
        this.shown = Arrays.stream(UpkeepCause.values()).filter(c -> perDistance(0, c) > 0 || perDistance(1, c) > 0).toList();
    }

    /** The chart of a plan by its place. */
    public static Chart of(StudyResult result, int plan, UnitSystem system, ChartTheme theme) {
        UpkeepCauseChart build = new UpkeepCauseChart(result, plan, system, theme);
        int height = HEIGHT_AROUND + HEIGHT_PER_CAUSE * build.shown.size();
        return new Chart(NAME, TITLE, build.chart(), build.words(), build.data(), height, ChartFrame.least(height),
                Subjects.NONE);
    }

    private JFreeChart chart() {
        DefaultCategoryDataset dataset = new DefaultCategoryDataset();
        LegendItemCollection legend = new LegendItemCollection();
        BarRenderer bars = new BarRenderer();
        bars.setBarPainter(new StandardBarPainter());
        bars.setShadowVisible(false);
        for (int buses = 0; buses < BUSES.size(); buses++) {
            for (UpkeepCause cause : shown) {
                dataset.addValue(perDistance(buses, cause), BUSES.get(buses), cause.word());
            }
            bars.setSeriesPaint(buses, theme.plan(buses));
            legend.add(ChartFrame.swatch(BUSES.get(buses), theme.plan(buses)));
        }
        bars.setDefaultToolTipGenerator((data, row, column) -> data.getRowKey(row) + ", " + data.getColumnKey(column) + ": "
                + figure(data.getValue(row, column).doubleValue()) + " " + unit());
        CategoryAxis causes = new BarAxis();
        ChartFrame.style(causes, theme);
        causes.setMaximumCategoryLabelWidthRatio(0.4f);
        CategoryPlot plot = new CategoryPlot(dataset, causes,
                ChartFrame.valueAxis("Upkeep per distance (" + unit() + ")", Figures.pattern("0.00"), theme), bars);
        plot.setOrientation(PlotOrientation.HORIZONTAL);
        plot.setRangeAxisLocation(AxisLocation.BOTTOM_OR_LEFT);
        ChartFrame.style(plot, theme);
        plot.setFixedLegendItems(legend);
        return ChartFrame.around(plot, TITLE, words(), theme);
    }

    private String unit() {
        return Unit.MONEY_PER_KM.symbol(system, result.input().currency());
    }

    private static String figure(double perDistance) {
        return Figures.pattern("0.000").format(perDistance);
    }

    /** Cost of a cause over distance in the unit shown, of engine buses (0) or electric buses (1). */
    private double perDistance(int buses, UpkeepCause cause) {
        double km = 0;
        double cost = 0;
        for (UpkeepYear year : plan.upkeep()) {
            if (result.input().types().get(year.record().vehicle().type()).electric().isPresent() == (buses == 1)) {
                km += year.record().use().km();
                cost += year.costs().getOrDefault(cause, 0.0);
            }
        }
        return km > 0 ? Unit.MONEY_PER_KM.show(cost / km, system) : 0;
    }

    private String words() {
        StringBuilder words = new StringBuilder(plan.name() + ", all years, base-date prices:");
        for (int buses = 0; buses < BUSES.size(); buses++) {
            int place = buses;
            double sum = shown.stream().mapToDouble(c -> perDistance(place, c)).sum();
            words.append(buses == 0 ? " " : ", ").append(BUSES.get(buses).toLowerCase(Locale.ROOT)).append(' ')
                    .append(sum > 0 ? figure(sum) + " " + unit() : "none");
        }
        return words.append('.').append(calibration()).toString();
    }

    /** How far the model misses the work orders before it is calibrated. */
    private String calibration() {
        UpkeepCalibrations types = UpkeepCalibrations.of(result.input(), result.duty());
        UpkeepCalibration all = IntStream.range(0, result.input().types().size()).mapToObj(types::of)
                .reduce(UpkeepCalibration.NONE, UpkeepCalibration::plus);
        if (!(all.modelled() > 0)) {
            return "";
        }
        DoubleSummaryStatistics factors = IntStream.range(0, result.input().types().size()).mapToObj(types::of)
                .filter(c -> c.buses() > 0).mapToDouble(UpkeepCalibration::factor).summaryStatistics();
        DecimalFormat factor = Figures.pattern("0.00");
        return " Calibrated by the work orders of " + all.buses() + (all.buses() == 1 ? " bus" : " buses")
                + ": work orders over model × " + factor.format(factors.getMin())
                + " to × " + factor.format(factors.getMax()) + " by vehicle type.";
    }

    private ChartData data() {
        List<List<Object>> rows = new ArrayList<>();
        shown.forEach(c -> rows.add(List.of(c.word(), perDistance(0, c), perDistance(1, c))));
        return new ChartData(List.of("Cause", BUSES.get(0) + " (" + unit() + ")", BUSES.get(1) + " (" + unit() + ")"), rows);
    }
}
