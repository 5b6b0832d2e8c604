package org.amberyard.charts;

import java.awt.Paint;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.amberyard.core.air.EmissionSource;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.plan.PlaceholderUse;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.data.category.CategoryDataset;
import org.jfree.data.category.DefaultCategoryDataset;

/**
 * A pollutant year by year by its source, the plans side by side under letters. What is upstream of the tank is not in it. Where
 * placeholders took part, the chart says so.
 */
public final class EmissionsChart {
    private static final int HEIGHT = 440;
    private static final double KG_PER_TONNE = 1000;

    private final StudyResult result;
    private final Pollutant pollutant;
    private final ChartTheme theme;
    private final List<EmissionSource> sources;

    private EmissionsChart(StudyResult result, Pollutant pollutant, ChartTheme theme) {
        this.result = result;
        this.pollutant = pollutant;
        this.theme = theme;
        this.sources = Arrays.stream(EmissionSource.values()).filter(EmissionSource::inTotal).filter(this::anything).toList();
    }

    /** The chart of a pollutant. Greenhouse gases are told in tonnes, other pollutants in kilograms, in every unit system. */
    public static Chart of(StudyResult result, Pollutant pollutant, UnitSystem system, ChartTheme theme) {
        EmissionsChart build = new EmissionsChart(result, pollutant, theme);
        Subject behind = new Subject(Subject.Kind.FACTORS, 0);
        return new Chart("emissions_" + pollutant.name().toLowerCase(Locale.ROOT), build.title(), build.chart(),
                build.sentences(), build.data(), HEIGHT, ChartFrame.LEAST_HEIGHT, entity -> Optional.of(behind));
    }

    private String title() {
        return "Emissions by year: " + pollutant.label();
    }

    private boolean anything(EmissionSource source) {
        return result.plans().stream().flatMap(p -> p.air().stream())
                .anyMatch(a -> a.emissions().of(source).kg(pollutant) != 0);
    }

    private JFreeChart chart() {
        if (!knownAnywhere()) {
            return ChartFrame.without(title(), sentences(), theme);
        }
        List<PlanPart<EmissionSource>> keys = keys();
        CategoryPlot plot = new CategoryPlot(dataset(keys), PlansByYear.axis(result, theme),
                ChartFrame.valueAxis(unit() + "/yr", Figures.pattern("#,##0.###"), theme),
                PlansByYear.renderer(keys, this::paint, this::tip, theme));
        ChartFrame.style(plot, theme);
        plot.setFixedLegendItems(legend());
        String subtitle = PlansByYear.subtitle("In " + unit() + " a year", result);
        return ChartFrame.around(plot, title(), standing().isEmpty() ? subtitle : subtitle + "\n" + standing(), theme);
    }

    private boolean knownAnywhere() {
        return result.plans().stream().flatMap(p -> p.air().stream()).anyMatch(a -> a.emissions().total().known(pollutant));
    }

    private String standing() {
        return PlaceholderUse.in(result, pollutant) ? PlaceholderUse.WORDS : "";
    }

    private String unit() {
        return pollutant.warms() ? "t" : "kg";
    }

    private double shown(double kg) {
        return pollutant.warms() ? kg / KG_PER_TONNE : kg;
    }

    private double shown(PlanResult plan, int year, EmissionSource source) {
        return shown(plan.air().get(year).emissions().of(source).kg(pollutant));
    }

    private double total(PlanResult plan, int year) {
        return shown(plan.air().get(year).emissions().total().kg(pollutant));
    }

    private List<PlanPart<EmissionSource>> keys() {
        List<PlanPart<EmissionSource>> keys = new ArrayList<>();
        for (int plan = 0; plan < result.plans().size(); plan++) {
            for (EmissionSource source : sources) {
                keys.add(new PlanPart<>(plan, result.plans().get(plan).name(), source, source.label()));
            }
        }
        return keys;
    }

    private DefaultCategoryDataset dataset(List<PlanPart<EmissionSource>> keys) {
        DefaultCategoryDataset dataset = new DefaultCategoryDataset();
        for (PlanPart<EmissionSource> key : keys) {
            for (int year = 0; year < result.input().years(); year++) {
                double value = shown(result.plans().get(key.plan()), year, key.part());
                dataset.addValue(Double.isNaN(value) ? null : (Number) value, key, (Integer) (result.input().baseYear() + year));
            }
        }
        return dataset;
    }

    private Paint paint(EmissionSource source) {
        return theme.oneOf(sources.indexOf(source), sources.size());
    }

    private String tip(CategoryDataset data, int row, int column) {
        Number value = data.getValue(row, column);
        return data.getRowKey(row) + ", " + data.getColumnKey(column) + ": "
                + (value == null ? "not known" : figure(value.doubleValue()) + " " + unit());
    }

    private static String figure(double value) {
        return Figures.pattern(Math.abs(value) < 10 ? "0.###" : "#,##0.#").format(value);
    }

    private LegendItemCollection legend() {
        LegendItemCollection items = new LegendItemCollection();
        sources.forEach(s -> items.add(ChartFrame.swatch(s.label(), paint(s))));
        return items;
    }

    private String sentences() {
        int last = result.input().years() - 1;
        StringBuilder text = new StringBuilder(pollutant.label() + " from " + result.input().baseYear() + " to "
                + (result.input().baseYear() + last) + ", without what is upstream of the tank.");
        result.plans().forEach(p -> text.append(' ').append(sentence(p, last)));
        return (standing().isEmpty() ? text : text.append(' ').append(standing())).toString();
    }

    private String sentence(PlanResult plan, int last) {
        double sum = 0;
        for (int year = 0; year <= last; year++) {
            sum += total(plan, year);
        }
        return plan.name() + ": " + (Double.isNaN(sum) ? "not known, because a factor is missing."
                : String.format(Locale.ROOT, "%s %s in all, %s in the first year and %s in the last.", figure(sum), unit(),
                        figure(total(plan, 0)), figure(total(plan, last))));
    }

    private ChartData data() {
        List<String> columns = new ArrayList<>(List.of("Plan", "Year"));
        sources.forEach(s -> columns.add(s.label() + " (" + unit() + " " + pollutant.label() + ")"));
        columns.addAll(List.of("Total (" + unit() + " " + pollutant.label() + ")", "Standing"));
        List<List<Object>> rows = new ArrayList<>();
        for (PlanResult plan : result.plans()) {
            for (int year = 0; year < result.input().years(); year++) {
                int at = year;
                List<Object> row = new ArrayList<>(List.of(plan.name(), result.input().baseYear() + year));
                sources.forEach(s -> row.add(known(shown(plan, at, s))));
                row.add(known(total(plan, year)));
                row.add(standing());
                rows.add(row);
            }
        }
        return new ChartData(columns, rows);
    }

    private static Object known(double value) {
        return Double.isNaN(value) ? "" : (Object) value;
    }
}
