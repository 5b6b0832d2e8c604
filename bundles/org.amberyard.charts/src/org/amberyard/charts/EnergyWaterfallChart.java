package org.amberyard.charts;

import java.util.List;
import java.util.Optional;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.duty.RouteUse;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.data.category.DefaultCategoryDataset;

/** Energy per distance of a route with an electric type by cause, each bar starting where the last one ends. */
public final class EnergyWaterfallChart {
    private static final String NAME = "energy_by_cause";
    private static final String TITLE = "Energy by cause";
    private static final String TOTAL = "Total";
    private static final int HEIGHT_AROUND = 130;
    private static final int HEIGHT_PER_BAR = 32;
    private static final int LEAST_AROUND = 110;
    private static final int LEAST_PER_BAR = 19;

    private final EnergyByCause energy;
    private final ChartTheme theme;

    private EnergyWaterfallChart(EnergyByCause energy, ChartTheme theme) {
        this.energy = energy;
        this.theme = theme;
    }

    /** The chart of a route and a type by their places in the study; it says why where there is nothing to show. */
    public static Chart of(StudyResult result, int route, int type, UnitSystem system, ChartTheme theme) {
        Optional<Subject> behind = Optional.of(new Subject(Subject.Kind.TYPE, type));
        Optional<EnergyUse> year = result.input().types().get(type).electric()
                .flatMap(e -> result.duty().use(route, type)).map(RouteUse::year).filter(u -> u.km() > 0);
        if (year.isEmpty()) {
            String reason = none(result.input(), route, type);
            String unit = Unit.KWH_PER_KM.symbol(system, result.input().currency());
            return new Chart(NAME, TITLE, ChartFrame.without(TITLE, reason, theme), reason,
                    new ChartData(EnergyByCause.columns(unit), List.of()), HEIGHT_AROUND,
                    HEIGHT_AROUND, entity -> behind);
        }
        EnergyByCause energy = new EnergyByCause(result, route, type, year.get(), system);
        int height = HEIGHT_AROUND + HEIGHT_PER_BAR * (energy.shown().size() + 1);
        return new Chart(NAME, TITLE, new EnergyWaterfallChart(energy, theme).chart(), energy.sentences(), energy.data(),
                height, LEAST_AROUND + LEAST_PER_BAR * (energy.shown().size() + 1), entity -> behind);
    }

    private static String none(StudyInput study, int route, int type) {
        return study.types().get(type).name() + " is not electric, does not fit "
                + study.duty().routes().get(route).name() + " or never drives there.";
    }

    private JFreeChart chart() {
        DefaultCategoryDataset dataset = dataset();
        CategoryPlot plot = new CategoryPlot(dataset, WaterfallBars.causeAxis(theme), energyAxis(),
                WaterfallBars.of(theme, Figures.pattern("0.00;−0.00"), (column, value) -> dataset.getColumnKey(column) + ": "
                        + EnergyByCause.figure(value) + " " + energy.unit()));
        plot.setOrientation(PlotOrientation.HORIZONTAL);
        plot.setRangeAxisLocation(AxisLocation.BOTTOM_OR_LEFT);
        ChartFrame.style(plot, theme);
        plot.setFixedLegendItems(new LegendItemCollection());
        return ChartFrame.around(plot, TITLE, energy.caption(), theme);
    }

    /** The renderer takes the last bar for the sum of the others. */
    private DefaultCategoryDataset dataset() {
        DefaultCategoryDataset dataset = new DefaultCategoryDataset();
        energy.shown().forEach(c -> dataset.addValue(c.perDistance(), TOTAL, c.label()));
        dataset.addValue(energy.total(), TOTAL, TOTAL);
        return dataset;
    }

    private NumberAxis energyAxis() {
        NumberAxis axis = ChartFrame.valueAxis("Energy per distance (" + energy.unit() + ")", Figures.pattern("0.0#;−0.0#"),
                theme);
        axis.setUpperMargin(0.12);
        return axis;
    }
}
